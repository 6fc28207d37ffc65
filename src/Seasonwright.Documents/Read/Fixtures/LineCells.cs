using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Cuts a line of plain text ("Sat 5 Sep, 18:00: Harbour Vale v Kalnes HK 28-25") into the cells a table would have.</summary>
internal static class LineCells
{
    /// <param name="line">The tidy line.</param>
    /// <param name="raw">As written: two spaces or more may set a pair of teams apart from what stands beside it.</param>
    public static List<string> Of(string line, string raw)
    {
        var pieces = raw.Split(["  ", "\u00A0 "], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Spelling.Tidy).ToList();
        return pieces.Count > 1 && pieces.Exists(piece => PairText.Read(piece).Home is not null) ? pieces.SelectMany(Of).ToList() : Of(line);
    }

    private static List<string> Of(string line)
    {
        var cells = new List<string>();
        var rest = line.TrimStart('*', '•', '·', '-', '–', '>', ' ');
        if (DateText.Find(rest) is { } date && (date.Start == 0 || date.End == rest.Length || date.Start < 4))
        {
            cells.Add(rest[date.Start..date.End]);
            rest = DateText.Without(rest, date);
        }
        var words = rest.Trim(' ', ',', ':', ';', '–', '-').Split(' ', StringSplitOptions.RemoveEmptyEntries).ToList();
        if (Take(words, fromEnd: false) is { } first) cells.Add(first);
        var last = Take(words, fromEnd: true);
        // "Kalnes HK - POSTPONED", "Skarholm IF (H) - cup quarter-final"
        var dash = words.FindLastIndex(word => word is "-" or "–" or "—");
        var behind = dash > 0 && dash < words.Count - 1 ? string.Join(' ', words.Skip(dash + 1)) : "";
        var isRemark = behind.Length > 0 && (FixtureDraft.IsState(behind) || VenueText.Behind(string.Join(' ', words.Take(dash))) is not null);
        if (isRemark) words.RemoveRange(dash, words.Count - dash);
        var result = words.Count > 1 && ResultText.Read(words[^1]) is not null && TimeText.Read(words[^1]).Time is null ? words[^1] : null;
        if (result is not null) words.RemoveAt(words.Count - 1);
        cells.Add(string.Join(' ', words).Trim(' ', ',', ':', ';', '–', '-'));
        if (result is not null) cells.Add(result);
        if (last is not null) cells.Add(last);
        if (isRemark) cells.Add(behind);
        return cells;
    }

    // A time of one or two words at an end of the line.
    private static string? Take(List<string> words, bool fromEnd)
    {
        for (var length = Math.Min(2, words.Count - 1); length >= 1; length--)
        {
            var start = fromEnd ? words.Count - length : 0;
            var text = string.Join(' ', words.Skip(start).Take(length)).Trim(',', ':', ';', '(', ')');
            if (TimeText.Read(text).Sense is not (TimeSense.Known or TimeSense.Midnight or TimeSense.Unknown or TimeSense.Doubtful or TimeSense.JustAfterMidnight) || text.Length < 2) continue;
            words.RemoveRange(start, length);
            return text;
        }
        return null;
    }
}
