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

    /// <param name="match">The match; its week, those of the matches that hang on it and those around them are open, the others stay as they are planned.</param>
    /// <param name="tell">Hears how many plans are made, as for <see cref="Branches.Of"/>.</param>
    /// <returns>Null for a match that is not conditional or has no day in the season, and where no week is left once it is known.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Branches? Of(Asked asked, MatchId match, Action<int> tell, CancellationToken cancel)
    {
        var (season, setup, wishes) = (asked.Season, asked.Setup, asked.Wishes);
        if (season.Match(match)?.Days is null) return null;
        var ids = new NaturalIds(season.Id);
        var hanging = Hanging(season, match);
        if (season.Weeks.Where(week => wishes.From is not { } from || week.Days.First > from).All(week => season.TargetOf(week.Id) is not null))
            wishes = wishes.Repairing(season, season, wishes.From ?? season.Weeks[0].Days.First) with { Reach = Reach.Around(WeeksBeside), Disrupted = season.Weeks.Where(week => hanging.Exists(other => other.Days is { } days && week.Days.Overlaps(days))).Select(week => week.Id).ToValueList() };
        return Branches.Of(season, setup, wishes, match, EvenChance, planned => Rulebook.Check(planned, setup).Findings.Count(finding => !finding.IsForced), (kind, key) => ids.Of(kind, match.Text, key), tell, cancel);
    }

    /// <summary>The weeks that are worth showing beside each other: from the last one that is alike on, and always with the match among them.</summary>
    /// <param name="differs">Index of the first week that differs; where none does, one past the last.</param>
    /// <param name="match">Index of the match's week.</param>
    /// <param name="weeks">Weeks of the season.</param>
    public static Range Shown(int differs, int match, int weeks)
    {
        var first = Math.Clamp(Math.Clamp(differs - 1, match + WeeksBeside + 1 - Branches.Weeks, match), 0, Math.Max(0, weeks - Branches.Weeks));
        return first..Math.Min(first + Branches.Weeks, weeks);
    }

    /// <summary>The matches that one way has and the other has not: those decided with it, either way, and what waits for any of them in turn.</summary>
    private static List<Match> Hanging(Season season, MatchId match)
    {
        var on = season.Match(match)!.Condition?.On;
        return [.. season.AllMatches.Where(other => other.Id == match || on is not null && other.Condition?.On == on).SelectMany(other => Branches.NotPlayedWithout(season, other.Id)).Distinct()];
    }
}
