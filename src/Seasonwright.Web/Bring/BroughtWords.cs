using Seasonwright.Core.Edits;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;

namespace Seasonwright.Web.Bring;

/// <summary>What a row of a workbook holds and becomes, in words.</summary>
internal static class BroughtWords
{
    private const int MostSaid = 5, LongestSaid = 110;

    /// <summary>The first things that stand in it.</summary>
    public static string Says(SheetRow row)
    {
        var said = row.Entries.Count > 0 ? row.Entries.Select(entry => entry.Text) : row.Matches.Select(match => match.Text);
        var first = said.Distinct(StringComparer.Ordinal).Take(MostSaid + 1).ToList();
        return Spelling.Cut(string.Join(" · ", first.Take(MostSaid)) + (first.Count > MostSaid ? " …" : ""), LongestSaid);
    }

    /// <summary>"18 matches", "load of 40 weeks", "a track of your own"; what waits for an answer is counted beside them.</summary>
    public static IEnumerable<string> Becomes(RowMade made)
    {
        foreach (var kind in made.Edits.GroupBy(Kind, StringComparer.Ordinal).Where(kind => kind.Key.Length > 0))
            yield return Words.Say(kind.Count() == 1 ? $"bring.one-{kind.Key}" : $"bring.some-{kind.Key}", kind.Count());
        if (made.Row.Matches.Count(match => !match.IsWritten) is > 0 and var waiting) yield return Words.Say(waiting == 1 ? "bring.waits-one" : "bring.waits", waiting);
    }

    private static string Kind(SeasonEdit edit) => edit switch
    {
        SetMatch => "match",
        SetEvent => "event",
        PaintPhase => "phase",
        PaintBlock => "block",
        SetWeekLoad => "load",
        SetEmphasis => "emphasis",
        SetTestDay => "test",
        SetTrack => "track",
        // The cells of a track are told with it.
        _ => "",
    };
}
