using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Finds a round in a heading ("Round 1 – Saturday 5 September") or behind a competition ("County Cup R3").</summary>
internal static class RoundText
{
    private static readonly string[] Numbered = ["round", "matchday", "md", "spieltag", "runde", "journée", "jornada", "giornata", "speelronde", "omgang", "gameweek", "gw", "rd", "r", "omg", "turno", "fecha", "day"];

    private static readonly string[] Named =
        ["quarter-final", "quarter-finals", "quarterfinal", "quarterfinals", "semi-final", "semi-finals", "semifinal", "semifinals", "final", "finals", "qf", "sf", "viertelfinale", "halbfinale", "achtelfinale", "finale", "endspiel", "play-off", "playoff", "play-offs", "last 16", "last 8", "cuartos", "octavos"];

    /// <summary>The round named in a heading, as written; null if none is.</summary>
    public static string? InHeading(string text)
    {
        var tokens = Token.Cut(text.Length > DateText.LongestText ? text[..DateText.LongestText] : text);
        for (var i = 0; i < tokens.Count; i++)
        {
            if (tokens[i].IsWord && Is(tokens[i].Text, Numbered) && i + 1 < tokens.Count && tokens[i + 1] is { IsNumber: true, Text.Length: <= 2 }) return text[tokens[i].Start..tokens[i + 1].End];
            // "3. Spieltag"
            if (tokens[i] is { IsNumber: true, Text.Length: <= 2 } && i + 2 < tokens.Count && tokens[i + 1].Text is "." && Is(tokens[i + 2].Text, Numbered)) return text[tokens[i].Start..tokens[i + 2].End];
        }
        foreach (var word in text.Split([' ', ',', ':', '–', '—'], StringSplitOptions.RemoveEmptyEntries)) if (Is(word, Named)) return word;
        return null;
    }

    /// <summary>"Cup R1" is the cup and its round R1; a text without a round behind it is a competition alone.</summary>
    public static (string Competition, string? Round) Behind(string competition)
    {
        var words = competition.Split(' ');
        if (words.Length < 2) return (competition, null);
        var last = words[^1];
        if (Is(last, Named) || last.Length is 2 or 3 && (last[0] is 'R' or 'r') && last[1..].All(char.IsAsciiDigit)) return (Name(words[..^1]), last);
        return words.Length > 2 && Is(words[^2], Numbered) && last.All(char.IsAsciiDigit) ? (Name(words[..^2]), $"{words[^2]} {last}") : (competition, null);
    }

    private static string Name(string[] words) => string.Join(' ', words).TrimEnd(' ', ',', '-', '–', ':');

    private static bool Is(string word, string[] words) => words.Contains(word, StringComparer.OrdinalIgnoreCase);
}
