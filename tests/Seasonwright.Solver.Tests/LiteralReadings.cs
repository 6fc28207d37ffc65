using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// What stricter, literal readings of five rules find in a plan. Read off the season's weeks alone: no code of the engine and none of the
/// rulebook. As in the design's own checker (solver.md, 13.4) nothing is said of a rise in a week of three matches or more: they alone force it.
/// </summary>
internal sealed class LiteralReadings
{
    private readonly List<Week> weeks;

    public LiteralReadings(Season season, Setup team)
    {
        var point = team.ReferenceWeek.Au / 100.0;
        var official = season.Matches.Where(match => match is { IsOfficial: true, IsOff: false, Day: not null }).Select(match => match.Day!.Value).ToList();
        weeks =
        [
            .. season.Weeks.Select(week =>
            {
                var matches = season.MatchesIn(week).Where(match => !match.IsOff).ToList();
                return new Week(
                    season.KindOf(week.Id) ?? WeekKind.Building,
                    season.PhaseOf(week)?.Phase.Kind is PhaseKind.Competition or PhaseKind.Peak,
                    (season.TargetOf(week.Id)?.Au ?? 0) / point,
                    matches.Sum(match => team.MatchLoad.Of(match).Au) / point,
                    matches.Count,
                    official.Exists(day => day >= week.Days.First && day.DayNumber - week.Days.First.DayNumber < 14));
            }),
        ];
    }

    /// <summary>A: introductory, re-entry, reduced and congested weeks count as building weeks. Runs of more than three in preparation, of more than eight in the competition.</summary>
    public int LongRuns()
    {
        var (found, run) = (0, 0);
        for (var at = 0; at < weeks.Count; at++)
        {
            var builds = Trains(at) && weeks[at].Kind is not (WeekKind.Unloading or WeekKind.Taper);
            // From preparation into the competition the count begins anew.
            run = builds ? at > 0 && weeks[at].IsCompetition != weeks[at - 1].IsCompetition ? 1 : run + 1 : 0;
            if (run == (weeks[at].IsCompetition ? 9 : 4)) found++;
        }
        return found;
    }

    /// <summary>B: the four weeks before are looked at whatever lies in them, days off too. A week of more than 1.3 times their mean, and of more than 1.5 times (a warning); a mean below 70 % of 72 points with an official match within fourteen days.</summary>
    public (int Warnings, int Cautions) Trailing()
    {
        var (warnings, cautions) = (0, 0);
        for (var at = 4; at < weeks.Count; at++)
        {
            if (!Trains(at)) continue;
            var before = weeks[(at - 4)..at];
            var mean = before.Average(week => week.Total);
            if (weeks[at].Matches < 3 && weeks[at].Total > 1.5 * mean) warnings++;
            else if (weeks[at].Matches < 3 && weeks[at].Total > 1.3 * mean) cautions++;
            if (weeks[at].IsMatchNear && mean < 0.7 * 72) cautions++;
        }
        return (warnings, cautions);
    }

    /// <summary>C: an unloading week is 20 to 60 % lighter in its whole load than up to three weeks before it that train and do not unload.</summary>
    public int Unloading() => Weeks(WeekKind.Unloading).Count(at =>
    {
        var before = Before(at, other => Trains(other) && weeks[other].Kind != WeekKind.Unloading).Take(3).Select(other => weeks[other].Total).ToList();
        return before.Count > 0 && 1 - weeks[at].Total / before.Average() is < 0.2 or > 0.6;
    });

    /// <summary>D: the training of a taper is 20 to 35 % less (of two weeks and more 41 to 60 %) than that of the two weeks before it of whatever kind. Beside two matches it may be less.</summary>
    public int Tapers() => Weeks(WeekKind.Taper).Where(at => at == 0 || weeks[at - 1].Kind != WeekKind.Taper).Count(first =>
    {
        var run = weeks.Skip(first).TakeWhile(week => week.Kind == WeekKind.Taper).ToList();
        var (least, most) = run.Count == 1 ? (0.2, 0.35) : (0.41, 0.6);
        var before = weeks.Take(first).TakeLast(2).Select(week => week.Training).DefaultIfEmpty(0).Average();
        return before > 0 && 1 - run.Average(week => week.Training) / before is var drop && (drop < least || drop > most && run.TrueForAll(week => week.Matches < 2));
    });

    /// <summary>E: a week rises by at most 10 % from the last comparable one (none that unloads, tapers, is reduced, off or of a transition); not in the first two weeks after fourteen days off and more.</summary>
    public int Rises()
    {
        var (found, since, off) = (0, 0, 14);
        for (var at = 0; at < weeks.Count; at++)
        {
            if (!Trains(at))
            {
                off += 7;
                continue;
            }
            since = off >= 14 ? 0 : since + 1;
            off = 0;
            var last = Before(at, other => Trains(other) && weeks[other].Kind is not (WeekKind.Unloading or WeekKind.Taper or WeekKind.Reduced)).Select(other => weeks[other].Total).FirstOrDefault();
            if (since >= 2 && weeks[at].Matches < 3 && last > 0 && weeks[at].Total > 1.1 * last) found++;
        }
        return found;
    }

    private bool Trains(int at) => weeks[at].Kind is not (WeekKind.Break or WeekKind.Transition);

    private IEnumerable<int> Weeks(WeekKind kind) => Enumerable.Range(0, weeks.Count).Where(at => weeks[at].Kind == kind);

    private static IEnumerable<int> Before(int at, Func<int, bool> holds) => Enumerable.Range(0, at).Reverse().Where(holds);

    /// <param name="Total">Points of the whole week.</param>
    /// <param name="Load">Points of its matches.</param>
    private sealed record Week(WeekKind Kind, bool IsCompetition, double Total, double Load, int Matches, bool IsMatchNear)
    {
        public double Training => Math.Max(0, Total - Load);
    }
}
