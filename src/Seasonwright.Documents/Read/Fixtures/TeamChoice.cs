using Seasonwright.Core;
using Seasonwright.Documents.Read.Names;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Whose matches are taken from a list.</summary>
/// <param name="Team">As the list writes it; null for one team's own list, or while it is asked.</param>
/// <param name="Teams">The names found.</param>
/// <param name="IsOurs">Whether a name of the list is our team.</param>
/// <param name="IsOurSide">Whether a cell of the team column is our team.</param>
/// <param name="Ask">Id of the open question that all rows wait for.</param>
/// <param name="Problem">The team is not in the list.</param>
internal sealed record TeamChoice(string? Team, ValueList<TeamFound> Teams, Func<string, bool> IsOurs, Func<string, bool> IsOurSide, string? Ask, Problem? Problem)
{
    private const int MostOptions = 60;

    /// <param name="wanted">Our team's name, or the one answered for it.</param>
    /// <param name="club">Our team's name; null when not known.</param>
    public static TeamChoice Of(string file, ListLayout layout, List<Sides> sides, string? wanted, string? club, Asker asker)
    {
        var matches = layout.Matches;
        var teams = Found(sides.Where(s => s.AreBoth).SelectMany(s => new[] { s.Home!, s.Away! }));
        if (teams.Count > 0) return OneSide(AmongPairs(file, teams, sides, wanted, club, asker), matches, sides, asker);
        var own = Found(matches.Select(match => match.Team));
        return own.Count > 1 ? AmongOwn(own, matches, wanted, asker) : OneTeam(file, layout, sides, own, wanted, club, asker);
    }

    // One team's own list: ours, unless it says that it is another's.
    private static TeamChoice OneTeam(string file, ListLayout layout, List<Sides> sides, ValueList<TeamFound> own, string? wanted, string? club, Asker asker)
    {
        var (ours, matches) = (new TeamChoice(null, own, _ => false, _ => true, null, null), layout.Matches);
        if (club is null) return ours;
        var first = matches.Count > 0 ? matches[0].Line : int.MaxValue;
        var titles = layout.Skipped.Where(line => line.Kind is "title" or "season" or "furniture" && line.Line < first).Select(line => line.Text.Trim(';', ',', '|', '\t', ' ', '"')).ToList();
        var says = own.Select(team => team.Name).Concat(titles).Append(Path.GetFileNameWithoutExtension(file));
        if (says.Any(name => ClubName.MayBeOne(name, club) || wanted is not null && Spelling.Same(name, wanted))) return ours;
        var owner = own.Select(team => team.Name).FirstOrDefault(ClubName.IsInColumn) ?? titles.Find(ClubName.IsInTitle);
        // Nobody plays against themselves.
        var against = matches.Where((_, i) => Spelling.Same(sides[i].Opponent, club)).Select(match => match.Line).ToList();
        if (owner is null && against.Count == 0) return ours;
        var options = new[] { Asker.Option("own", "ours"), Asker.Option("own", "other") };
        var asked = owner is not null ? asker.Ask("own", Spelling.Fold(owner), [], options, [owner, club]) : asker.Ask("own-against", "", against, options, [against[0], club], name: "Q-own");
        return asked.Answer == "other" ? ours with { Problem = Problem.Of("other-club", file, null, null, club) } : ours;
    }

    // The list names both teams of each match.
    private static TeamChoice AmongPairs(string file, ValueList<TeamFound> teams, List<Sides> sides, string? wanted, string? club, Asker asker)
    {
        // A name that was answered for ours stays a question in sight, answered: it may be another club's.
        var named = wanted is null || club is null || !Spelling.Same(wanted, club) ? null : teams.FirstOrDefault(team => Spelling.Same(team.Name, wanted))?.Name;
        string? ask = null;
        if (named is null)
        {
            var alike = wanted is null ? [.. teams] : teams.Where(team => IsNear(team.Name, wanted)).ToList();
            if (alike.Count == 0) return new(null, teams, _ => false, _ => false, null, Problem.Of("team-unknown", file, null, null, wanted, string.Join("; ", teams.Take(MostOptions).Select(team => team.Name))));
            var everywhere = teams.Where(team => team.Matches == sides.Count(s => s.AreBoth)).ToList();
            var offered = wanted is null && everywhere.Count == 1 && teams.Count > 2 ? everywhere[0].Name : null;
            var asked = asker.Ask("team", "", [], alike.Concat(teams.Except(alike)).Take(MostOptions).Select(team => new AnswerOption(team.Name, team.Name)), [teams.Count, Unfound(wanted)], offered);
            (named, ask) = (asked.Answer ?? offered, asked.IsOpen ? asked.Id : null);
        }
        if (named is null) return new(null, teams, _ => false, _ => false, ask, null);
        var ours = new HashSet<string>(StringComparer.Ordinal) { Spelling.Fold(named) };
        foreach (var other in teams.Where(team => NameLikeness.AreAlike(team.Name, named)))
        {
            var lines = Enumerable.Empty<int>();
            var asked = asker.Ask("spelling", SpellingKey(named, other.Name), lines, [Asker.Option("spelling", "one", named), Asker.Option("spelling", "two")], [named, other.Name]);
            if (asked.Answer == "one") ours.Add(Spelling.Fold(other.Name));
        }
        return new(named, teams, name => ours.Contains(Spelling.Fold(name)), _ => true, ask, null);
    }

    // One club's list with a column that says which of its teams plays.
    private static TeamChoice AmongOwn(ValueList<TeamFound> own, List<ListedMatch> matches, string? wanted, Asker asker)
    {
        var offered = own.FirstOrDefault(team => wanted is not null && Spelling.Same(team.Name, wanted))?.Name;
        var asked = asker.Ask("team", "", matches.Where(match => match.Team.Length > 0).Select(match => match.Line), own.Select(team => new AnswerOption(team.Name, team.Name)), [own.Count, offered is null ? Unfound(wanted) : ""], offered);
        var named = asked.Answer ?? offered;
        return new(named, own, _ => false, cell => named is not null && (cell.Length == 0 || Spelling.Same(cell, named)), asked.IsOpen ? asked.Id : null, null);
    }

    // A league's list may name the club in its pairs, and in a column of their own which of its teams play.
    private static TeamChoice OneSide(TeamChoice club, List<ListedMatch> matches, List<Sides> sides, Asker asker)
    {
        var ours = matches.Where((_, i) => sides[i].AreBoth && (club.IsOurs(sides[i].Home!) || club.IsOurs(sides[i].Away!))).ToList();
        var squads = Found(ours.Select(match => match.Team));
        if (squads.Count < 2) return club;
        var asked = asker.Ask("team", Spelling.Fold(club.Team!), ours.Select(match => match.Line), squads.Select(squad => new AnswerOption(squad.Name, squad.Name)), [squads.Count, ""], name: "Q-squad");
        return club with { IsOurSide = cell => asked.Answer is { } named && (cell.Length == 0 || Spelling.Same(cell, named)) };
    }

    private static string Unfound(string? wanted) => wanted is null ? "" : Sentences.Say("ask.team.unfound", wanted);

    public static string SpellingKey(string one, string other) => string.Join('|', new[] { Spelling.Fold(one), Spelling.Fold(other) }.Order(StringComparer.Ordinal));

    private static bool IsNear(string name, string wanted) => NameLikeness.AreAlike(name, wanted)
        || Spelling.Fold(name).Contains(Spelling.Fold(wanted), StringComparison.Ordinal) || Spelling.Fold(wanted).Contains(Spelling.Fold(name), StringComparison.Ordinal);

    private static ValueList<TeamFound> Found(IEnumerable<string> names) => names
        .Where(name => name.Length > 0 && !Times.TimeText.IsUnknown(name) && !ListWords.IsBye(name))
        .GroupBy(Spelling.Fold, StringComparer.Ordinal).Select(group => new TeamFound(group.First(), group.Count())).ToValueList();
}
