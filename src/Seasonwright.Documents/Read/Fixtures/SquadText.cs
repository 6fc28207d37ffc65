using Seasonwright.Documents.Read.Names;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Tells a row that names one of a club's teams ("1st XI", "U16A", "Damer 2") from one that names a competition or a part of the season. From memory.</summary>
internal static class SquadText
{
    private const int Longest = 40;

    private static readonly HashSet<string> Teams = new(("xi xv vii viii iv xiii team squad reserves reserve colts seniors senior juniors junior youth academy minis women womens men mens ladies girls boys under "
        + "damen herren frauen manner mannschaft jugend maedchen madchen jungen dames heren meisjes jongens hold lag damer dam herrer herr jenter gutter piger drenge flickor pojkar jente gutt pige dreng "
        + "equipe feminines feminine masculins masculine filles garcons equipo femenino masculino senior cadete juvenil infantil alevin squadra femminile maschile druzyna kobiety mezczyzni").Split(' '), StringComparer.Ordinal);

    // "Women's League", "Damen Pokal", "Junior Cup": what is played, not who plays.
    private static readonly string[] Competitions = ["league", "liga", "ligue", "division", "divisjon", "cup", "pokal", "coupe", "copa", "coppa", "serie", "championship", "tournament", "turnier", "turnering", "tournoi", "torneo", "friendl", "round", "runde", "phase", "term", "season", "saison"];

    public static bool Is(string text)
    {
        if (text.Length > Longest) return false;
        var words = NameLikeness.Words(text);
        if (words.Count > 4 || words.Any(word => Competitions.Any(competition => word.Contains(competition, StringComparison.Ordinal)))) return false;
        return words.Any(word => Teams.Contains(word) || IsAge(word));
    }

    // "u16", "u16a", "j16", "g14"
    private static bool IsAge(string word) => word.Length is 3 or 4 && word[0] is 'u' or 'j' or 'g' or 'p' or 'f' && char.IsAsciiDigit(word[1]) && char.IsAsciiDigit(word[2]);
}
