using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Every plan of a short season with one competition period, valued week by week from the written model: the conditions and the value
/// are told again here from the weeks of the plan itself, with none of the search's code. It takes from the engine what stands in
/// tables of their own (ranges of kinds, preparedness), which have tests of their own.
/// </summary>
internal sealed class BruteForce(Problem problem)
{
    private const int Tolerance = 16;

    private readonly ValueList<MatchPreparedness> preparedness = Preparedness.Of(problem);
    private readonly Cycle cycle = problem.Cycles[0];
    private readonly ValueList<Variant> tapers = Tapers.Of(problem);
    private readonly List<Planned> plan = [];
    private long best = long.MinValue;

    public long Valued { get; private set; }

    public List<Planned>? BestPlan { get; private set; }

    public sealed record Planned(PhaseKind Phase, WeekKind Kind, Variant Variant, int Points);

    public long? Best()
    {
        Go(0);
        return BestPlan is null ? null : best;
    }

    private void Go(long value)
    {
        var at = plan.Count;
        if (at == problem.Weeks.Count)
        {
            if (value <= best) return;
            (best, BestPlan) = (value, [.. plan]);
            return;
        }
        foreach (var phase in PhasesAt(at))
            foreach (var (kind, variant) in KindsAt(at, phase))
            {
                var range = KindTable.Week(problem, problem.Weeks[at], kind, variant, phase);
                if (Free(at, kind, variant))
                {
                    // No later week reads this load, so only its best matters.
                    var candidates = Enumerable.Range(range.Least, range.Most - range.Least + 1)
                        .Select(points => (Points: points, Value: Week(new(phase, kind, variant, points), range))).Where(one => one.Value is not null).ToList();
                    if (candidates.Count > 0) Take(candidates.MaxBy(one => one.Value).Points);
                }
                else
                {
                    for (var points = (range.Least + 2) / 3 * 3; points <= range.Most; points += 3) Take(points);
                    // A fixed load may lie between the steps.
                    if (Facts(at).Lock?.Points is { } locked && locked % 3 > 0) Take(locked);
                }

                void Take(int points)
                {
                    var week = new Planned(phase, kind, variant, points);
                    if (Week(week, range) is not { } worth) return;
                    plan.Add(week);
                    Go(value + worth);
                    plan.RemoveAt(at);
                }
            }
    }

    private PlannedWeek Facts(int at) => problem.Weeks[at];

    private bool IsC(int at) => at >= cycle.First && at <= cycle.Last;

    private IEnumerable<PhaseKind> PhasesAt(int at)
    {
        if (at > cycle.Last) return [PhaseKind.Transition];
        if (IsC(at)) return [PhaseKind.Competition];
        PhaseKind[] all = [PhaseKind.GeneralPreparation, PhaseKind.SpecificPreparation, PhaseKind.PreCompetition];
        if (at == 0) return all;
        return Facts(at).IsBreak ? [plan[at - 1].Phase] : all.Where(phase => phase >= plan[at - 1].Phase);
    }

    /// <summary>Training weeks since the season's start or the last break of 14 days or more, and which of the two.</summary>
    private (int Since, bool IsStart) Back(int at)
    {
        var breaks = Enumerable.Range(0, at + 1).Where(week => Facts(week).DaysOff >= 14 && !Facts(week).IsBreak).ToList();
        var from = breaks.Count > 0 ? breaks[^1] : 0;
        if (breaks.Count == 0 && problem.Start == StartLevel.Kept) return (1000, true);
        return (Enumerable.Range(from, at - from).Count(week => !Facts(week).IsBreak), breaks.Count == 0 || Enumerable.Range(0, from).All(week => Facts(week).IsBreak));
    }

    private bool NothingTrained(int at) => plan.Take(at).All(week => week.Kind is WeekKind.Break or WeekKind.Reduced);

    private List<(WeekKind, Variant)> KindsAt(int at, PhaseKind phase)
    {
        var week = Facts(at);
        if (week.IsBreak) return [(WeekKind.Break, Variant.None)];
        if (phase == PhaseKind.Transition) return [(WeekKind.Transition, Variant.None)];
        if (tapers[at] != Variant.None) return [(WeekKind.Taper, tapers[at])];
        if (week.IsReduced) return [(WeekKind.Reduced, Variant.None)];
        List<(WeekKind, Variant)> kinds = [];
        var (since, isStart) = Back(at);
        var previous = at > 0 ? plan[at - 1] : null;
        if (!IsC(at) && NothingTrained(at)) return [(WeekKind.Introductory, Variant.First)];
        if (since < 2 && !(isStart && since == 1 && previous!.Kind == WeekKind.Introductory))
            return [phase == PhaseKind.GeneralPreparation ? (WeekKind.Introductory, since == 0 ? Variant.First : Variant.Second) : (WeekKind.ReEntry, since == 0 ? Variant.First : Variant.Second)];
        if (week.DaysOff > 0 && !NothingTrained(at)) return [phase == PhaseKind.GeneralPreparation ? (WeekKind.Introductory, Variant.First) : (WeekKind.ReEntry, Variant.WeekOff)];
        if (!IsC(at) && previous is { Kind: WeekKind.Introductory, Variant: Variant.First }) kinds.Add((WeekKind.Introductory, Variant.Second));
        var matches = week.Matches.Count;
        kinds.Add((matches > 1 ? WeekKind.Congested : IsC(at) && matches == 1 && week.OfficialMatches == 1 ? WeekKind.Competition : WeekKind.Building, Variant.None));
        if (matches > 1) return kinds;
        if (phase is PhaseKind.GeneralPreparation or PhaseKind.SpecificPreparation) kinds.Add((WeekKind.Overload, Variant.None));
        kinds.Add((WeekKind.Unloading, Variant.None));
        return kinds;
    }

    private bool Free(int at, WeekKind kind, Variant variant) => Facts(at).Days < 7 || kind switch
    {
        // A match-free week of the competition sets none: lighter weeks are held against those with a match.
        WeekKind.Building => IsC(at),
        WeekKind.Competition or WeekKind.Overload => false,
        WeekKind.Introductory or WeekKind.ReEntry => variant == Variant.First && Back(at) is (0, false),
        _ => true,
    };

    /// <summary>The load of the last week that set one: introductory, building, overload, competition, last week back.</summary>
    private int Level(int at)
    {
        for (var week = at - 1; week >= 0; week--)
            // Nearest of the three-point steps.
            if (!Free(week, plan[week].Kind, plan[week].Variant)) return (plan[week].Points + 1) / 3 * 3;
        return problem.Start switch { StartLevel.Off => 15, StartLevel.Home => 36, _ => 54 };
    }

    /// <summary>Building, overload and competition weeks since the last week that ended a run, and congested ones of the competition; six are told apart.</summary>
    private int Run(int at)
    {
        var run = 0;
        for (var week = at - 1; week >= 0; week--)
        {
            if (plan[week].Kind is WeekKind.Reduced || plan[week].Kind is WeekKind.Congested && !IsC(week)) continue;
            if (plan[week].Kind is not (WeekKind.Building or WeekKind.Competition or WeekKind.Overload or WeekKind.Congested)) break;
            run++;
        }
        return Math.Min(run, 6);
    }

    /// <summary>What the next week of the plan is worth; null where a condition speaks against it.</summary>
    private long? Week(Planned week, Limits.Range range)
    {
        Valued++;
        var at = plan.Count;
        var facts = Facts(at);
        var (matches, match, tenths, level, run) = (facts.Matches.Count, facts.MatchPoints, 10 * week.Points, Level(at), Run(at));
        var previous = at > 0 ? plan[at - 1] : null;
        var earlier = Enumerable.Range(0, at).Where(other => !Facts(other).IsBreak && Facts(other).Matches.Count <= 1).ToList();
        var usualMatch = earlier.Count > 0 ? Facts(earlier[^1]).MatchPoints : 0;
        if (IsC(at)) usualMatch = Math.Max(usualMatch, problem.OneMatch);
        var training = 10 * Math.Max(0, (IsC(at) && level > 85 ? 76 : level) - usualMatch);
        var isLoading = week.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload;

        bool Above(int least) => tenths < Math.Min(least, 10 * range.Most);
        bool Below(int most) => tenths > Math.Max(most, 10 * range.Least);

        // Phases: lengths of those left, the one gone on with, and those passed over.
        if (at <= cycle.Last)
        {
            var training_ = Enumerable.Range(0, cycle.First).Count(other => !Facts(other).IsBreak);
            var lengths = PhaseLengths.Of(isFirst: true, cycle.First, training_);
            if (!IsC(at) && WeeksIn(week.Phase) + (facts.IsBreak ? 0 : 1) is var weeksIn && !facts.IsBreak && weeksIn > lengths.Of(week.Phase).Most) return null;
            var wasIn = previous is null ? PhaseKind.GeneralPreparation : previous.Phase;
            if (at <= cycle.First)
                for (var phase = wasIn; phase < week.Phase; phase++)
                    if (WeeksIn(phase) < lengths.Of(phase).Least) return null;
            if (!IsC(at) && previous is null && lengths.Of(week.Phase).Most == 0 || previous is not null && previous.Phase != week.Phase && !IsC(at) && lengths.Of(week.Phase).Most == 0) return null;
        }

        int WeeksIn(PhaseKind phase) => Enumerable.Range(0, at).Count(other => plan[other].Phase == phase && plan[other].Kind != WeekKind.Break);

        // Runs and places. The size of a cut is held against the level of the last week, which the mean of the weeks before lies below: five hundredths less at its upper end; more at the lower end of a taper, towards which loads may fall.
        if (isLoading && run + 1 > (IsC(at) ? 6 : 3)) return null;
        if (isLoading && previous?.Kind == WeekKind.Overload) return null;
        if (week.Kind == WeekKind.Unloading && !(previous?.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Overload or WeekKind.Congested)) return null;
        if (week.Kind == WeekKind.Overload && !(previous?.Kind == WeekKind.Building && run is 1 or 2)) return null;

        // Loads.
        var (since, isStart) = Back(at);
        int? ceiling = null;
        if (!facts.IsBreak && week.Phase != PhaseKind.Transition)
        {
            if (since < 2) ceiling = isStart ? since == 0 ? 500 : 700 : level * (since == 0 ? 5 : 7);
            else if (facts.DaysOff > 0 && !NothingTrained(at)) ceiling = 8 * level;
        }
        if (ceiling is { } cap)
        {
            var most = matches > 0 ? Math.Max(cap, 10 * (match + (since < 2 ? 14 : 24))) : cap;
            if (Below(most)) return null;
        }
        else if (isLoading || week.Kind == WeekKind.Introductory)
        {
            if (Below(10 * level + Math.Min(100, 3 * level / 2) + Tolerance)) return null;
            if (previous?.Kind == WeekKind.Congested && Below(10 * (KindTable.Week(problem, Facts(at - 1), WeekKind.Congested, Variant.None, previous.Phase).Least + 10) + Tolerance)) return null;
        }
        var (small, large) = (0, 0);
        if (week.Kind == WeekKind.Unloading) (small, large) = IsC(at) ? (700, 800) : (500, 650);
        if (week.Kind == WeekKind.Taper) (small, large) = week.Variant is Variant.Short or Variant.BeforeMany ? (700, 750) : (450, 540);
        if (large > 0 && (Below(10 * match + training * large / 1000) || !(week.Kind == WeekKind.Taper && matches > 1) && Above(10 * match + training * small / 1000))) return null;
        if (matches == 2 && week.Kind is WeekKind.Congested or WeekKind.Taper or WeekKind.Reduced && matches == 2 && Enumerable.Range(0, at).Any(other => !Facts(other).IsBreak && Facts(other).Matches.Count == 1) && Below(10 * match + training * 6 / 10)) return null;
        // The week after a week back is no lighter than it.
        if (week.Kind is WeekKind.Building or WeekKind.Competition && previous is { Kind: WeekKind.ReEntry } && Facts(at - 1).Matches.Count < 2)
        {
            if (Above(10 * level - Tolerance)) return null;
        }
        else if (week.Kind is WeekKind.Building or WeekKind.Overload && !IsC(at))
        {
            if (previous?.Kind == WeekKind.Building && previous.Phase == week.Phase && (week.Kind == WeekKind.Overload || cycle.First - at > 2) && Above(10 * level + (week.Kind == WeekKind.Overload ? 50 : 20) - Tolerance)) return null;
            if (previous?.Kind is WeekKind.Unloading or WeekKind.Introductory && Above(10 * level * 85 / 100 - Tolerance)) return null;
        }
        var isAfterCompetition = week.Kind == WeekKind.Competition && previous?.Kind == WeekKind.Competition;
        if (isAfterCompetition && Above(10 * level - 120 - Tolerance)) return null;
        if (facts.Lock?.Points is { } locked && week.Points != locked) return null;

        // Value.
        var value = Weight(at) * (week.Points - match) - Distance(Math.Abs(tenths - GuideOf(at, week, run + (isLoading ? 1 : 0), training, ceiling, range)));
        if (isAfterCompetition) value -= 300 * Math.Abs(week.Points - level);
        var goal = Goal(at, week.Phase);
        value += isLoading || week.Kind == WeekKind.Congested ? goal : week.Kind is WeekKind.Break or WeekKind.Transition ? 0 : goal / 2;
        var isOfRun = previous?.Kind is WeekKind.Building or WeekKind.Competition or WeekKind.Congested or WeekKind.Reduced && !NothingTrained(at);
        var isFirstLight = matches < 2 && at > 1 && Facts(at - 1).Matches.Count > 1 && Facts(at - 2).Matches.Count > 1;
        if (isOfRun && week.Kind == WeekKind.Unloading) value -= BlockPrice(run == 0 && !isFirstLight ? 1 : run, previous!.Phase == PhaseKind.Competition);
        if (isOfRun && week.Kind == WeekKind.Taper && week.Variant != Variant.FullLast) value -= BlockPrice(run, previous!.Phase == PhaseKind.Competition);
        if (week.Kind == WeekKind.Overload) value -= BlockPrice(run + 1, false);
        if (week.Kind == WeekKind.Taper && previous?.Kind == WeekKind.Unloading) value -= 150_000;
        if (previous is not null && !IsC(at) && at <= cycle.Last && previous.Phase != week.Phase && (week.Kind == WeekKind.Unloading || (isLoading || week.Kind == WeekKind.Congested) && run > 0)) value -= 60_000;
        if (week.Kind == WeekKind.Unloading)
        {
            if (matches == 1) value -= 10_000;
            if (!IsC(at) && cycle.First - at is 1 or 2) value -= 40_000;
            var isBeforeRest = at + 1 < problem.Weeks.Count && (Facts(at + 1).IsBreak || at == cycle.Last);
            value += isBeforeRest ? -150_000 : isFirstLight ? 60_000 : 0;
        }
        return value;
    }

    private static long BlockPrice(int weeks, bool inC) => weeks switch { 1 => inC ? 120_000 : 150_000, 2 => inC ? 60_000 : 30_000, 3 => inC ? 20_000 : 0, 6 => inC ? 20_000 : 0, _ => 0 };

    private static long Distance(int tenths)
    {
        long price = 0;
        for (var tenth = 1; tenth <= tenths; tenth++) price += tenth <= 50 ? 150 : tenth <= 100 ? 400 : 900;
        return price;
    }

    private long Weight(int at)
    {
        long Mean(bool key, long worth)
        {
            var of = preparedness.Where(match => match.Match.IsKey == key).ToList();
            return of.Count == 0 ? 0 : (long)Math.Round(worth * (decimal)of.Sum(match => match.Weeks[at]) / (of.Count * 1_000_000m), MidpointRounding.AwayFromZero);
        }
        var hasKey = preparedness.Any(match => match.Match.IsKey);
        return Mean(true, 6000) + Mean(false, hasKey ? 900 : 6000);
    }

    private long Goal(int at, PhaseKind phase)
    {
        // MST 50, POW 30, HIC 20; levels GP 2 1 1, SP 3 2 3, PC 2 3 2, C 2 2 2, T 1 0 0; 60, 28 and 28 days.
        int[] levels = phase switch { PhaseKind.GeneralPreparation => [2, 1, 1], PhaseKind.SpecificPreparation => [3, 2, 3], PhaseKind.PreCompetition => [2, 3, 2], PhaseKind.Competition => [2, 2, 2], _ => [1, 0, 0] };
        int[] weights = [50, 30, 20], days = [60, 28, 28];
        var aims = new List<DateOnly>();
        foreach (var match in problem.Weeks.SelectMany(week => week.Matches).Where(match => match.IsKey))
            if (!problem.Weeks.SelectMany(week => week.Matches).Any(other => other.IsKey && other.Date < match.Date && match.Date.DayNumber - other.Date.DayNumber <= 14)) aims.Add(match.Date);
        var middle = Facts(at).First.AddDays(Facts(at).Days / 2);
        double sum = 0;
        for (var quality = 0; quality < 3; quality++)
        {
            var full = 0.0;
            for (var week = 0; week < 8; week++) full += 3 * Math.Exp(-7.0 * week / days[quality]);
            foreach (var aim in aims.Where(aim => aim > middle)) sum += weights[quality] / 100.0 * levels[quality] * Math.Exp((double)(middle.DayNumber - aim.DayNumber) / days[quality]) / aims.Count / full;
        }
        return (long)Math.Round(3_000_000 * sum, MidpointRounding.AwayFromZero);
    }

    private int GuideOf(int at, Planned week, int run, int training, int? ceiling, Limits.Range range)
    {
        var facts = Facts(at);
        var match = 10 * facts.MatchPoints;
        var before = Enumerable.Range(0, at).Count(other => !Facts(other).IsBreak);
        var weeks = Enumerable.Range(0, cycle.First).Count(other => !Facts(other).IsBreak);
        var kept = problem.Start == StartLevel.Kept;
        var top = weeks >= 8 ? 1040 : weeks >= 6 ? 980 : 920;
        var envelope = Math.Min((kept ? 720 : 700) + 55 * Math.Max(0, before - (kept ? 1 : 2)), (cycle.First - at) switch { 1 => Math.Min(top, 880), 2 => Math.Min(top, 960), _ => top });
        (int, int) intro = problem.Start switch { StartLevel.Off => (420, 580), StartLevel.Home => (460, 620), _ => (600, 660) };
        int[] inC = [680, 720, 760, 720, 700, 660];
        var guide = week.Kind switch
        {
            WeekKind.Introductory when ceiling is { } most && (Back(at) is ( < 2, false) || facts.DaysOff > 0 && Back(at).Since >= 2) => 95 * most / 100,
            WeekKind.Introductory => (week.Variant == Variant.First ? intro.Item1 : intro.Item2) * (100 * facts.Days / 7) / 100,
            WeekKind.Building => IsC(at) ? 750 : envelope * (run == 1 ? 94 : run == 2 ? 100 : 105) / 100,
            WeekKind.Overload => envelope * 105 / 100 + 50,
            WeekKind.Competition => inC[run - 1],
            WeekKind.Congested => 10 * range.Least + (facts.Matches.Count > 2 ? 10 : 40),
            WeekKind.Taper or WeekKind.Reduced when facts.Matches.Count > 1 => 10 * range.Least + (facts.Matches.Count > 2 ? 10 : 40),
            WeekKind.Unloading => match + training * (IsC(at) ? 79 : 60) / 100,
            WeekKind.Taper => match + training * (week.Variant == Variant.Short ? 73 : week.Variant == Variant.BeforeMany ? 75 : week.Variant == Variant.FullEarlier ? 56 : 47) / 100,
            WeekKind.ReEntry => Math.Min(95 * ceiling!.Value / 100, Back(at) is ( < 2, true) || facts.Matches.Count > 0 ? int.MaxValue : Math.Max(10 * range.Least, training)),
            WeekKind.Reduced => match + 90 + problem.UsualPractice * ((facts.Matches.Count switch { 0 => 1000, 1 => 800, 2 => 400, 3 => 200, _ => 80 }) * facts.Availability / 100) / 100,
            WeekKind.Transition => match + 220,
            _ => match,
        };
        return Math.Min(guide, 10 * problem.LargestWeek);
    }
}
