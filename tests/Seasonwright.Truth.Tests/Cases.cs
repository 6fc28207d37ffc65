namespace Seasonwright.Truth.Tests;

/// <summary>The case files, as they lie beside the tests.</summary>
internal static class Cases
{
    public static string PathOf(string name) => Path.Combine(AppContext.BaseDirectory, "Cases", name);

    /// <summary>Rows of a comma-separated table without quoting, by heading. Lines that begin with # are remarks.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows(string name)
    {
        var lines = File.ReadAllLines(PathOf(name)).Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split(',')).ToList();
        return lines.Skip(1).Select(cells => lines[0].Zip(cells).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal)).ToList();
    }
}
