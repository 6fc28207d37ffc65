using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.Year.YearTexts;

namespace Seasonwright.Documents.Year;

/// <summary>
/// Three letters for each opponent, different for different names as far as their letters allow. An opponent not yet known is
/// named by the round or the competition.
/// </summary>
internal sealed class OpponentCodes
{
    private readonly ImmutableDictionary<string, string> codes;

    public OpponentCodes(IEnumerable<Match> matches)
    {
        var given = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in matches.Select(match => match.Opponent).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var candidates = Candidates(name).ToList();
            var code = candidates.Find(candidate => !taken.Contains(candidate)) ?? candidates[0];
            taken.Add(code);
            given[name] = code;
        }
        codes = given.ToImmutable();
    }

    public string Of(Match match) =>
        match.Opponent is { } name ? codes[name]
        : (match.Round ?? match.Competition) is { } stage ? Candidates(stage).First()
        : Say("match.unknown.code");

    /// <summary>The first letters of the most telling word; then two of it and a later one.</summary>
    private static IEnumerable<string> Candidates(string name)
    {
        var words = name.Split([' ', '-', '/', '.', '\u00a0'], StringSplitOptions.RemoveEmptyEntries)
            .Select(Letters).Where(word => word.Count > 0).ToList();
        // Clubs begin with "HC" or "1."; what tells them apart is the first longer word.
        var word = words.Find(w => w.Count > 3) ?? words.MaxBy(w => w.Count) ?? [Say("match.unknown.code")];
        yield return Upper(word.Take(3));
        for (var third = 3; third < word.Count; third++)
            yield return Upper([word[0], word[1], word[third]]);
        foreach (var other in words.Where(w => !ReferenceEquals(w, word)))
            yield return Upper([.. word.Take(2), other[0]]);
    }

    private static List<string> Letters(string word)
    {
        List<string> letters = [];
        var each = StringInfo.GetTextElementEnumerator(word);
        while (each.MoveNext())
            letters.Add(each.GetTextElement());
        return letters;
    }

    private static string Upper(IEnumerable<string> letters) => string.Concat(letters).ToUpperInvariant();
}
