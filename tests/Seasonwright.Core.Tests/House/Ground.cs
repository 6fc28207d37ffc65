namespace Seasonwright.Core.Tests.House;

/// <summary>The house as it lies on disk, found upwards from the tests.</summary>
internal static class Ground
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    public static string Source { get; } = Path.Combine(Root, "src");

    /// <summary>Every hand-written source file, bin and obj left out.</summary>
    public static IReadOnlyList<string> SourceFiles { get; } = Directory.EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
        .Where(file => !Path.GetRelativePath(Source, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
        .Order(StringComparer.Ordinal)
        .ToList();

    private static string Find(DirectoryInfo? folder)
    {
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Seasonwright.slnx"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not lie in the house.");
    }
}
