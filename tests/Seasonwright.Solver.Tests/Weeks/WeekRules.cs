using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver.Tests;

/// <summary>What the rulebook, which shares no code with the week stage, says of a season once a proposed week is taken, with the practices it assumed.</summary>
internal static class WeekRules
{
    private static string Id(string kind, string key) => $"{kind}-{key.Replace(' ', '-')}";

    /// <summary>The season with the week as proposed.</summary>
    public static Season Taken(Season season, Setup setup, WeekProposal proposal) => Decider.After(season, [.. WeekEdits.Of(season, setup, proposal, Id), .. Practices(proposal)]);

    /// <summary>
    /// Findings of days and weeks above a caution that the proposal brings: none that is there without it, and none that matches, test
    /// days and practices bring alone whose number the head coach entered. A week that asks for no speed has none.
    /// </summary>
    public static List<Finding> Brought(Season season, Setup setup, WeekProposal proposal)
    {
        var problem = proposal.Problem;
        var first = problem.Days[0].Date;
        var isEntered = season.PracticesOf(season.WeekOf(first)!.Id) is not null;
        List<Season> without = [Decider.After(season, problem.Standing.Select(session => new RemoveSession(session.Id!.Value)))];
        // A little of ours beside a practice makes the rules speak that wait for a week to be laid out.
        without.Add(Decider.After(without[0], [
            .. WeekEdits.Of(without[0], setup, proposal with { Problem = problem with { Standing = [] }, Sessions = problem.Tests }, Id),
            .. isEntered ? Practices(proposal) : [],
            .. problem.Given.Where(session => session is { IsOurs: false, IsAssumed: false, Day: >= 0 } && session.Day < problem.Days.Count).Take(1).Select(session => Made("little", first.AddDays(session.Day), session.Slot, SessionKind.Recovery, 5, 1))]));
        // Sprints on every day on which they may be: what the weeks beside lack is theirs.
        var sprints = problem.Days.Where(day => WeekJudge.Of(problem, [new WeekSession(day.Index, DaySlot.Morning, SessionKind.Speed, 20, 5, [QualityKind.Speed])]).Count == 0).ToList();
        var sprinted = Decider.After(Taken(season, setup, proposal), sprints.Select(day => Made($"sprint{day.Index}", day.Date, DaySlot.Morning, SessionKind.Speed, 20, 5)));
        var still = Rulebook.Check(sprinted, setup).Findings.Where(finding => finding.Rule.Id == Sprints && finding.Severity > Severity.Caution).ToList();
        // Nor is a week that has its dose to make up for one beside it that has sessions of ours and none of sprints.
        var isLeftBeside = proposal.Sessions.Any(session => session.Kind == SessionKind.Speed) && new[] { first.AddDays(-1), first.AddDays(problem.Days.Count) }.Select(season.WeekOf).OfType<SeasonWeek>()
            .Any(week => season.SessionsIn(week).Where(session => session.IsOurs).ToList() is { Count: > 0 } ours && !ours.Exists(session => session is { Kind: SessionKind.Speed, IsCancelled: false }));
        bool IsBeside(Finding finding) => finding.Rule.Id == Sprints && (problem.Asked[(int)QualityKind.Speed] == 0 || isLeftBeside || still.Exists(other => other.Place.First <= finding.Place.Last && finding.Place.First <= other.Place.Last));
        var known = without.SelectMany(one => Rulebook.Check(one, setup).Findings).ToLookup(finding => finding.Key, finding => finding.Severity);
        return [.. Rulebook.Check(Taken(season, setup, proposal), setup).Findings.Where(finding => finding is { IsForced: false, Severity: > Severity.Caution, Rule.Scope: RuleScope.Day or RuleScope.Week }
            && !known[finding.Key].Any(severity => severity >= finding.Severity)
            && !IsBeside(finding))];
    }

    private const string Sprints = "sprint-exposure-gap";

    private static SetSession Made(string id, DateOnly day, DaySlot slot, SessionKind kind, int minutes, decimal rpe) => new(new Session(new(Id("made", id)), day, slot, kind, new Minutes(minutes), new Rpe(rpe)));

    private static IEnumerable<SeasonEdit> Practices(WeekProposal proposal) => proposal.Problem.Given.Where(session => session.IsAssumed).Select((session, at) => new SetSession(
        new Session(new(Id("assumed", $"{proposal.Problem.Days[session.Day].Date:yyyy-MM-dd} {at}")), proposal.Problem.Days[session.Day].Date, session.Slot, session.Kind, new Minutes(session.Minutes), new Rpe(session.Rpe))));
}
