using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>Lines whose cells stand below each other, set apart by spaces, as printed lists have them.</summary>
internal static class SpacedColumns
{
    /// <summary>Fewer lines stand below each other by chance.</summary>
    private const int FewestLines = 3;

    private const int FewestColumns = 3;

    /// <summary>The rows and how many columns they have; null where no columns of spaces run through all lines that have some. A line without a run of spaces inside is one cell.</summary>
    public static (ValueList<CellRow> Rows, int Columns)? Of(ValueList<string> lines)
    {
        var texts = lines.Select(line => line.Replace('\u00A0', ' ').TrimEnd()).ToList();
        var set = texts.Where(HasRun).ToList();
        if (set.Count < FewestLines || set.Count * 2 < texts.Count(text => text.Length > 0)) return null;
        var starts = Starts(set);
        if (starts.Count < FewestColumns || !set.TrueForAll(line => Cut(line, starts).All(cell => !HasRun(cell)))) return null;
        return (texts.Select((text, i) => new CellRow(i + 1, (HasRun(text) ? Cut(text, starts) : [text]).Select(Spelling.Tidy).ToValueList(), lines[i])).ToValueList(), starts.Count);
    }

    // Two spaces or more between two words.
    private static bool HasRun(string text) => text.Trim().Contains("  ", StringComparison.Ordinal);

    // Where a column begins: behind two places or more that are blank in every line.
    private static List<int> Starts(List<string> lines)
    {
        var isBlank = Enumerable.Range(0, lines.Max(line => line.Length)).Select(at => lines.TrueForAll(line => at >= line.Length || line[at] == ' ')).ToList();
        return [.. Enumerable.Range(0, isBlank.Count).Where(at => !isBlank[at] && (at == 0 || isBlank[at - 1] && (at == 1 || isBlank[at - 2])))];
    }

    private static IEnumerable<string> Cut(string line, List<int> starts) =>
        starts.Select((start, i) => start >= line.Length ? "" : line[start..Math.Min(line.Length, i + 1 < starts.Count ? starts[i + 1] : line.Length)].TrimEnd());
}
