using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Both teams in one text, or one opponent with marks around it.</summary>
/// <param name="Home">Null unless the text names both teams.</param>
/// <param name="Away">Null unless the text names both teams.</param>
/// <param name="Opponent">Null when the text names both.</param>
/// <param name="Venue">From "(A)", "@", "at"; null when nothing says it.</param>
/// <param name="Versus">"vs" or "v" stood in front, which says home only in lists that write "@" or "at" for away.</param>
internal sealed record PairText(string? Home, string? Away, string? Opponent, Venue? Venue, bool Versus)
{
    private static readonly string[] Against = ["vs.", "vs", "v.", "v", "versus", "gegen", "gg.", "contre", "contra", "mot", "mod", "tegen"];

    private static readonly string[] At = ["@", "at", "bei", "chez"];

    private static readonly string[] To = ["to", "against", "zu", "vs"];

    private static readonly string[] Dashes = ["-", "–", "—", ":"];

    /// <param name="text">A tidy cell.</param>
    /// <param name="isTeam">Whether a text is a known team; it finds the right dash where names hold dashes. Null when none is known.</param>
    public static PairText Read(string text, Func<string, bool>? isTeam = null)
    {
        Venue? venue = null;
        if (VenueText.Behind(text) is { } marked) (venue, text) = (marked.Venue, marked.Text);
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        // "@Kalnes HK" without a space
        if (text.StartsWith('@') && text.Length > 1) return new(null, null, text[1..].Trim(), venue ?? Core.Seasons.Venue.Away, false);
        if (words.Length > 1 && Is(words[0], At)) return new(null, null, string.Join(' ', words[1..]), venue ?? Core.Seasons.Venue.Away, false);
        if (words.Length > 1 && Is(words[0], Against)) return new(null, null, string.Join(' ', words[1..]), venue, true);
        // "home v Brovik", "away at Kalnes HK", "away to Brovik": no team is called so.
        if (words.Length > 2 && words[0].Length > 3 && VenueText.Mark(words[0]) is { } said && (Is(words[1], Against) || Is(words[1], At) || Is(words[1], To))) return new(null, null, string.Join(' ', words[2..]), venue ?? said, false);
        for (var i = 1; i < words.Length - 1; i++)
        {
            if (Is(words[i], Against)) return Both(words[..i], words[(i + 1)..], venue);
            if (Is(words[i], At[..2])) return Both(words[(i + 1)..], words[..i], venue);
        }
        var dashes = Enumerable.Range(1, Math.Max(0, words.Length - 2)).Where(i => Dashes.Contains(words[i], StringComparer.Ordinal)).ToList();
        var dash = dashes.Where(i => isTeam is not null && (isTeam(string.Join(' ', words[..i])) || isTeam(string.Join(' ', words[(i + 1)..])))).Append(dashes.Count == 1 && isTeam is null ? dashes[0] : -1).First();
        return dash > 0 ? Both(words[..dash], words[(dash + 1)..], venue) : new(null, null, text, venue, false);
    }

    /// <summary>Whether a word stands between two teams ("v", "gegen").</summary>
    public static bool IsAgainst(string word) => Is(word, Against);

    private static PairText Both(string[] home, string[] away, Venue? venue) => new(string.Join(' ', home), string.Join(' ', away), null, venue, true);

    private static bool Is(string word, string[] words) => words.Contains(word, StringComparer.OrdinalIgnoreCase);
}
