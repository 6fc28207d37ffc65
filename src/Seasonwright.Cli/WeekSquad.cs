using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Cli;

/// <summary>What <c>week</c> tells of a squad list: who does what the others do not, and what the rules about players find in the week.</summary>
/// <param name="Players">How many the list has.</param>
/// <param name="Parts">Sessions that are not everybody's.</param>
/// <param name="NotJudged">What is missing where a rule could not judge, in words.</param>
internal sealed record WeekSquad(int Players, IReadOnlyList<WeekSquad.Part> Parts, IReadOnlyList<FindingLine> Findings, IReadOnlyList<string> NotJudged)
{
    public static WeekSquad Of(Season season, Setup setup, SeasonWeek week, IReadOnlyList<Player> players)
    {
        var checkup = Rulebook.CheckSquad(season, setup, players, week.Days);
        return new WeekSquad(
            players.Count,
            [.. season.SessionsIn(week).Where(session => session is { Groups: not null, IsCancelled: false }).Select(session => Part.Of(session, season, setup, players))],
            [.. checkup.Findings.Select(FindingLine.Of)],
            [.. checkup.Answers.SelectMany(answer => answer.Missing).Distinct(StringComparer.Ordinal)]);
    }

    public void Write(Terminal terminal)
    {
        terminal.Tell("week.squad", Players, Findings.Count);
        foreach (var part in Parts) terminal.Tell(part.Players.Count > 0 ? "week.squad.part" : "week.squad.nobody", part.Date, part.Session, string.Join(", ", part.Players));
        foreach (var finding in Findings) terminal.Tell("week.squad.finding", RuleText.Of(finding.Severity), finding.Message, finding.Rule);
        if (NotJudged.Count > 0) terminal.Tell("week.squad.missing", string.Join(" ", NotJudged));
    }

    /// <summary>A session that is not everybody's, and whose it is.</summary>
    internal sealed record Part(DateOnly Date, string Session, IReadOnlyList<string> Players)
    {
        public static Part Of(Session session, Season season, Setup setup, IReadOnlyList<Player> players) => new(session.Day, SessionWords.Name(session),
            [.. players.Where(player => player.SessionsOn(season, setup.Id, session.Day).Any(one => one.Id == session.Id)).Select(player => player.Athlete.Name)]);
    }
}
