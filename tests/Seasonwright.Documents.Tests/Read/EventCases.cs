namespace Seasonwright.Documents.Tests.Read;

/// <summary>The case files of event lists, in the source tree.</summary>
internal static class EventCases
{
    public static string Folder { get; } = Path.Combine(Above(AppContext.BaseDirectory), "tests", "Cases", "events");

    public static string PathOf(string name) => Path.Combine(Folder, name);

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "Seasonwright.slnx")) ? folder : Above(Path.GetDirectoryName(folder.TrimEnd('/')) ?? throw new InvalidOperationException("The solution is not above the tests."));
}
