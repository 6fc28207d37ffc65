namespace Seasonwright.Wire.Tests;

/// <summary>The lines of docs/edits.md.</summary>
/// <param name="Heading">The edit they stand under.</param>
/// <param name="Refusal">Why the page says it is refused; null where it is accepted.</param>
public sealed record EditsPage(string Heading, string Line, string? Refusal)
{
    public static IReadOnlyList<EditsPage> Lines { get; } = Read(File.ReadAllLines(Repository.File("docs", "edits.md")));

    private static List<EditsPage> Read(string[] page)
    {
        const string refused = "> refused: ";
        var lines = new List<EditsPage>();
        var heading = "";
        foreach (var line in page)
        {
            if (line.StartsWith("### ", StringComparison.Ordinal)) heading = line[4..];
            if (line.StartsWith('{')) lines.Add(new(heading, line, null));
            if (line.StartsWith(refused, StringComparison.Ordinal)) lines[^1] = lines[^1] with { Refusal = line[refused.Length..] };
        }
        return lines;
    }
}
