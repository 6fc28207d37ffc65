using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.Year.OpponentCodes;

namespace Seasonwright.Documents.Year;

/// <summary>
/// What stands for an opponent not yet known: F, SF and QF for finals, F2 for the second game of a final, else what the round, the
/// series or the competition is called, as "PO" for play-off, "R25" for round 25 or "CUP". Common practice, no source.
/// </summary>
internal static class StageCode
{
    /// <param name="letters">How many letters a single word gives.</param>
    /// <returns>Null where nothing is known of the match.</returns>
    public static string? Of(Match match, int letters)
    {
        var round = match.Round?.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        if (round is [var number] && IsNumber(number))
            return "R" + number;
        // "Game 2" is a place in something that has a name of its own; "Semi-final, game 2" has it before.
        var game = match.Series?.Game.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "";
        if (game.Length > 0 && round is [.. var before, var last] && last == game)
            round = before is [.. var earlier, var word] && !Words(word).SelectMany(Parted).Any(IsFinal) ? earlier : before;
        return new[] { string.Join(' ', round), match.Series?.Name, match.Competition }
            .OfType<string>().Select(name => Code(name, letters)).FirstOrDefault(code => code is not null) is { } stage ? stage + game : null;
    }

    private static string? Code(string name, int letters)
    {
        var words = Words(name).Where(word => word.Any(char.IsLetterOrDigit)).SelectMany(Parted).ToList();
        if (words.Count == 0)
            return null;
        // Which cup it is the final of can be read from the days around; that it is a final cannot.
        if (IsFinal(words[^1]))
            return Part(name[..name.LastIndexOf("final", StringComparison.OrdinalIgnoreCase)]) is { } part ? part + "F" : "F";
        if (words.Count == 1)
            return Upper(Letters(words[0]).Take(letters));
        // Small words, as in "round of 16", do not count.
        return string.Concat(words.Where(word => IsNumber(word) || !char.IsLower(word, 0) || word.Length > 2).Take(3).Select(First));
    }

    /// <summary>Which part of the way to the final: what is joined to the word, as in "semi-final", or one of these before it.</summary>
    private static string? Part(string before)
    {
        var last = before.TrimEnd().Split(' ', '\u00a0')[^1];
        var isJoined = last.Length > 0 && !char.IsWhiteSpace(before[^1]);
        return last.ToUpperInvariant() switch
        {
            "1/2" or "1/2-" => "S",
            "1/4" or "1/4-" => "Q",
            "1/8" or "1/8-" => "8",
            "SEMI" or "QUARTER" or "HALF" => First(last),
            _ => isJoined && char.IsLetter(last, 0) ? First(last) : null,
        };
    }

    /// <summary>"Semifinal" as two words, in every language that writes it so.</summary>
    private static IEnumerable<string> Parted(string word)
    {
        var at = word.IndexOf("final", StringComparison.OrdinalIgnoreCase);
        return at > 0 && IsFinal(word[at..]) ? [word[..at], word[at..]] : [word];
    }

    private static bool IsFinal(string word) => word.ToUpperInvariant() is "FINAL" or "FINALS" or "FINALE";

    private static string First(string word) => IsNumber(word) ? word : Upper(Letters(word).Take(1));

    private static bool IsNumber(string word) => word.All(char.IsAsciiDigit);
}
