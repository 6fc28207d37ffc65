using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Home, away or neutral as lists mark it, alone or beside a place.</summary>
internal static class VenueText
{
    private static readonly Dictionary<string, Venue> Marks = new(StringComparer.Ordinal);

    static VenueText()
    {
        Mark(Venue.Home, "h|home|heim|heimspiel|d|dom|domicile|à domicile|c|casa|en casa|in casa|hjemme|hemma|thuis|local|host|hosts|zuhause|daheim|t|l|recevant|u siebie|gospodarz|home game|home match|hjemmekamp|hjemmebane|hemmamatch|thuiswedstrijd");
        Mark(Venue.Away, "a|away|aw|auswärts|auswaerts|auswärtsspiel|g|gast|ext|extérieur|à l'extérieur|f|fuera|fuori|trasferta|in trasferta|ude|borte|borta|uit|visitante|u|@|at|road|b|v|ext.|déplacement|visita|wyjazd|na wyjeździe|away game|away match|udekamp|udebane|bortekamp|bortebane|bortamatch|uitwedstrijd");
        Mark(Venue.Neutral, "n|neutral|neutral ground|neutral venue|neutraler platz|neutre|neutro|neutra|campo neutro|campo neutral|terrain neutre|neutralt|neutralna|neutral bane|neutraal|neutraal terrein");
    }

    /// <summary>Whether a whole cell is a mark.</summary>
    public static Venue? Mark(string cell) => Marks.TryGetValue(Spelling.Fold(cell).Trim('(', ')', '[', ']', '.', ' '), out var venue) ? venue : null;

    /// <summary>A cell with a mark, a place, or a place with a mark behind it in brackets ("Vale Hall (home)").</summary>
    public static (Venue? Venue, string? Place) Read(string cell)
    {
        if (cell.Length == 0 || Times.TimeText.IsUnknown(cell)) return (null, null);
        if (Mark(cell) is { } alone) return (alone, null);
        return Behind(cell) is { } marked ? (marked.Venue, marked.Text) : (null, cell);
    }

    /// <summary>A mark at the end, in brackets or behind a dash or comma: the venue, and the text without it.</summary>
    public static (Venue Venue, string Text)? Behind(string text)
    {
        foreach (var (open, close) in new[] { ('(', ')'), ('[', ']') })
        {
            var start = text.LastIndexOf(open);
            // A single letter in brackets may be a second team, "Kalnes (B)"; only these three are marks there.
            if (start > 0 && text.EndsWith(close) && text[(start + 1)..^1].Trim() is { } mark && (mark.Length > 1 || mark.ToUpperInvariant() is "H" or "A" or "N") && Mark(mark) is { } venue)
                return (venue, text[..start].TrimEnd());
        }
        foreach (var join in new[] { " - ", " – ", ", " })
        {
            var start = text.LastIndexOf(join, StringComparison.Ordinal);
            if (start > 0 && text.Length - start - join.Length > 1 && Mark(text[(start + join.Length)..]) is { } venue) return (venue, text[..start].TrimEnd());
        }
        return null;
    }

    private static void Mark(Venue venue, string words)
    {
        foreach (var word in words.Split('|')) Marks.TryAdd(word, venue);
    }
}
