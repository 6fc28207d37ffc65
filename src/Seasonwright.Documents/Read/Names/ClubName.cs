namespace Seasonwright.Documents.Read.Names;

/// <summary>What a text beside a list (its title, its file's name, its team column) says about whose list it is. It only ever leads to a question.</summary>
internal static class ClubName
{
    private static readonly HashSet<string> ListWords = new("fixtures fixture schedule schedules matches games spielplan spielplane termine terminliste calendrier calendario kampprogram kampplan spelprogram matchplan".Split(' '), StringComparer.Ordinal);

    // With these a title is a competition's or nobody's.
    private static readonly string[] LeagueEnds = ["league", "liga", "ligue", "ligaen", "division", "cup", "pokal", "coupe", "copa", "serie", "series", "conference", "championship", "championships", "tournament", "turnier", "association", "federation", "verband"];

    private static readonly HashSet<string> Plain = new(("for of and our my all list plan season saison term team teams squad senior seniors varsity mannschaft first half draft final official provisional updated version new the der die das "
        + "spring summer autumn winter fall home away preliminary csv txt mens womens male female january february march april may june july august september october november december").Split(' '), StringComparer.Ordinal);

    /// <summary>Whether a cell of the team column names a club, and not only which of its teams: "Kalnes HK", not "1st XV".</summary>
    public static bool IsInColumn(string cell) => Own(NameLikeness.Words(cell)).Any();

    /// <summary>Whether a title names a club: it says that it is a list of matches, or bears a word of clubs, and is no competition's; a line that ends with a colon leads to the list.</summary>
    public static bool IsInTitle(string title)
    {
        var words = NameLikeness.Words(title);
        return !title.EndsWith(':') && words.Any(word => ListWords.Contains(word) || NameLikeness.IsClubWord(word)) && !words.Any(word => LeagueEnds.Any(end => word.EndsWith(end, StringComparison.Ordinal))) && Own(words).Any();
    }

    /// <summary>Whether two names may be of one club: alike, one within the other, a word of their own in common, or one the other's initials.</summary>
    public static bool MayBeOne(string one, string other)
    {
        var (a, b) = (NameLikeness.Words(one), NameLikeness.Words(other));
        return Spelling.Same(one, other) || NameLikeness.AreAlike(one, other) || Own(a).Intersect(Own(b), StringComparer.Ordinal).Any() || a.Contains(Initials(b), StringComparer.Ordinal) || b.Contains(Initials(a), StringComparer.Ordinal);
    }

    private static IEnumerable<string> Own(IEnumerable<string> words) =>
        words.Where(word => word.Length > 2 && !word.Any(char.IsAsciiDigit) && !NameLikeness.IsClubWord(word) && !NameLikeness.IsTeamWord(word) && !ListWords.Contains(word) && !Plain.Contains(word));

    private static string Initials(List<string> words) => words.Count < 2 ? "?" : string.Concat(words.Where(word => !NameLikeness.IsTeamWord(word)).Select(word => word[0]));
}
