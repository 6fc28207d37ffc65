using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>
/// A few letters for each opponent, equally many for all, different for different names as far as their letters allow. An opponent
/// not yet known is named by what the match is: see <see cref="StageCode"/>.
/// </summary>
internal sealed class OpponentCodes
{
    private readonly int letters;
    private readonly ImmutableDictionary<string, string> codes;

    /// <param name="letters">2 or 3; a shorter name has fewer.</param>
    public OpponentCodes(IEnumerable<Match> matches, int letters)
    {
        this.letters = letters;
        var given = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in matches.Select(match => match.Opponent).OfType<string>().Where(IsName).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var candidates = Candidates(name).ToList();
            var code = candidates.Find(candidate => !taken.Contains(candidate)) ?? candidates[0];
            taken.Add(code);
            given[name] = code;
        }
        codes = given.ToImmutable();
    }

    public string Of(Match match) =>
        match.Opponent is { } name && codes.TryGetValue(name, out var code) ? code : StageCode.Of(match, letters) ?? Say("match.unknown.code");

    /// <summary>Lists fill the place of an opponent not yet known with a sign or with one of these (common practice, no source).</summary>
    private static bool IsName(string text) =>
        text.Any(char.IsLetterOrDigit) && text.Trim().ToUpperInvariant() is not ("TBA" or "TBC" or "TBD");

    /// <summary>The first letters of the most telling word; then its beginning with a later letter of it, or with one of another word.</summary>
    private IEnumerable<string> Candidates(string name)
    {
        var words = Words(name).Select(Letters).Where(word => word.Count > 0).ToList();
        // Clubs begin with "HC" or "1."; what tells them apart is the first longer word.
        var word = words.Find(w => w.Count > 3) ?? words.MaxBy(w => w.Count)!;
        yield return Upper(word.Take(letters));
        for (var last = letters; last < word.Count; last++)
            yield return Upper([.. word.Take(letters - 1), word[last]]);
        foreach (var other in words.Where(w => !ReferenceEquals(w, word)))
            yield return Upper([.. word.Take(letters - 1), other[0]]);
    }

    internal static string[] Words(string text) => text.Split([' ', '-', '/', '.', ',', '\u00a0'], StringSplitOptions.RemoveEmptyEntries);

    internal static List<string> Letters(string word)
    {
        List<string> each = [];
        var next = StringInfo.GetTextElementEnumerator(word);
        while (next.MoveNext())
            each.Add(next.GetTextElement());
        return each;
    }

    internal static string Upper(IEnumerable<string> letters) => string.Concat(letters).ToUpperInvariant();
}
