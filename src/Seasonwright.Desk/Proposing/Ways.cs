using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>Both ways on from a match that may not be played, out of the plan that stands where there is one.</summary>
public static class Ways
{
    /// <summary>Nobody says how likely it is.</summary>
    private const int EvenChance = 50;

    /// <summary>What differs further from the match than that is not for its sake. Common practice, no source.</summary>
    private const int WeeksBeside = 2;

    /// <param name="match">The match; its week and those around it are open, the others stay as they are planned.</param>
    /// <returns>Null for a match that is not conditional or has no day in the season.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Branches? Of(Season season, Setup setup, DateOnly today, MatchId match, CancellationToken cancel)
    {
        if (season.Match(match)?.Days is not { } days) return null;
        var (wishes, ids) = (Asked.ForPlan(season, setup, today, 1).Wishes, new NaturalIds(season.Id));
        if (season.Weeks.Where(week => wishes.From is not { } from || week.Days.First > from).All(week => season.TargetOf(week.Id) is not null))
            wishes = wishes.Repairing(season, season, wishes.From ?? season.Weeks[0].Days.First) with { Reach = WeeksBeside, Disrupted = season.Weeks.Where(week => week.Days.Overlaps(days)).Select(week => week.Id).ToValueList() };
        return Branches.Of(season, setup, wishes, match, EvenChance, planned => Rulebook.Check(planned, setup).Findings.Count(finding => !finding.IsForced), (kind, key) => ids.Of(kind, match.Text, key), cancel);
    }
}
