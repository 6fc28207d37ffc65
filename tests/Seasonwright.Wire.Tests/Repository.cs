namespace Seasonwright.Wire.Tests;

/// <summary>Files of the repository that tests look at.</summary>
public static class Repository
{
    private static readonly string Root = Above(AppContext.BaseDirectory);

    public static string File(params string[] path) => Path.Combine([Root, .. path]);

    private static string Above(string folder) => System.IO.File.Exists(Path.Combine(folder, "Seasonwright.slnx")) ? folder
        : Above(Path.GetDirectoryName(folder.TrimEnd('/')) ?? throw new InvalidOperationException("The solution is not above the tests."));
}
