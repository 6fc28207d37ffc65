using Seasonwright.Core;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A season as the engine reads it: a plain value. Loads are whole points, shares whole per cent or per mille, weeks counted from 0.</summary>
/// <param name="Weeks">None for a season that is not started.</param>
/// <param name="Cycles">One for each competition period, in order; one without competition for a season with no official match.</param>
/// <param name="UsualPractice">Points of the practices of a usual week.</param>
/// <param name="OneMatch">Points of one official match.</param>
/// <param name="LargestWeek">The most a week may hold, in points.</param>
/// <param name="KeepWeight">How dear it is to leave what stands, per mille of usual.</param>
/// <param name="FirstOpen">Index of the first week that is planned; those before it are facts, with what is entered of them.</param>
/// <param name="Tapers">What was said of tapers.</param>
public sealed record Problem(
    ValueList<PlannedWeek> Weeks,
    ValueList<Cycle> Cycles,
    StartLevel Start,
    Points Points,
    int UsualPractice,
    int OneMatch,
    int LargestWeek,
    int FirstOpen,
    int KeepWeight,
    Boldness Boldness,
    ValueList<PlannedGoal> Goals,
    ValueList<MatchTaper> Tapers,
    Limits Limits)
{
    /// <summary>The qualities that the team plans, of those that are solved, in order.</summary>
    public ValueList<QualityKind> Qualities { get; init; } = ValueList<QualityKind>.Empty;

    /// <summary>Conditions that are not asked for.</summary>
    public Relaxed LeftOut { get; init; } = Relaxed.None;

    /// <summary>Test days at most, those that stand not among them.</summary>
    public int MostTests { get; init; } = int.MaxValue;

    /// <summary>The time there is to train in a week of a phase; the label peak is competition where nothing of its own is said.</summary>
    public ValueList<PhaseTime> Time { get; init; } = ValueList<PhaseTime>.Empty;

    /// <summary>Points of an hour of training, at the mean effort of a usual week.</summary>
    public double PointsAnHour { get; init; } = 1;

    /// <summary>The most that a week of a phase may train, in points, its matches aside; <see cref="int.MaxValue"/> for no bound.</summary>
    public int MostTraining(PhaseKind phase) => TimeOf(phase)?.Hours is { } hours ? (int)(hours * PointsAnHour) : int.MaxValue;

    /// <summary>The days of a week of a phase with training; null for no bound.</summary>
    public int? DaysOf(PhaseKind phase) => TimeOf(phase)?.Days;

    /// <summary>Whether a plan that is repaired has no reason to give a week another emphasis than stands: it stays of its kind.</summary>
    public bool Stays(StructureWeek week) => KeepWeight > 0 && Weeks[week.Index].Standing(week.Kind) is not null && Weeks[week.Index].Matches.Count > 1 == (week.Kind == WeekKind.Congested);

    private PhaseTime? TimeOf(PhaseKind phase) => Time.FirstOrDefault(time => time.Phase == phase) ?? (phase == PhaseKind.Peak ? TimeOf(PhaseKind.Competition) : null);

    /// <summary>Test days that stand already.</summary>
    public ValueList<PlannedTest> Tests { get; init; } = ValueList<PlannedTest>.Empty;

    /// <summary>Exposures that are entered, for each week by quality: facts in settled weeks; in the others of a plan that is repaired they are left at a price.</summary>
    public ValueList<ValueList<int>> Levels { get; init; } = ValueList<ValueList<int>>.Empty;

    /// <summary>Weights of one, two and three goals by rank. Common practice, no source.</summary>
    private static readonly int[][] Weights = [[100], [60, 40], [50, 30, 20]];

    /// <summary>Reads a season. Total: whatever season, setup and wishes hold, there is a problem; whether it has a plan is told by solving it.</summary>
    public static Problem Of(Season season, Setup setup, Wishes wishes)
    {
        var points = new Points(setup.ReferenceWeek);
        var weeks = WeeksOf(season, setup, wishes, points).ToValueList();
        var limits = Limits.Of(setup);
        var read = new Problem(
            weeks,
            CyclesOf(weeks, Math.Clamp(wishes.WeeksBetweenCompetitions, Brief.LeastWeeksBetween, Brief.MostWeeksBetween)).ToValueList(),
            wishes.Start ?? StartOf(setup),
            points,
            Math.Clamp(points.Of(setup.UsualWeek.Practices.Load), 0, 200),
            points.Of(Load.Of(setup.MatchLoad.Minutes, setup.MatchLoad.Rpe)),
            Math.Clamp(wishes.LargestWeek, Brief.LeastWeek, Brief.MostWeek),
            weeks.Count(week => week.First < wishes.From),
            Math.Clamp(wishes.KeepWeight, 0, Wishes.HighestKeepWeight),
            wishes.Boldness,
            GoalsOf(season, setup),
            wishes.Stands is { } stands ? [.. AgreedTapers.Of(stands, limits.ClusterDays).Where(agreed => !wishes.Tapers.Any(said => said.Match == agreed.Match)), .. wishes.Tapers] : wishes.Tapers,
            limits)
        {
            Qualities = setup.Qualities.Select(quality => quality.Kind).Where(kind => kind < QualityKind.Prevention).Distinct().Order().ToValueList(),
            Levels = season.Weeks.Select(week => LevelsOf(season, setup, week)).ToValueList(),
            LeftOut = wishes.LeftOut,
            MostTests = wishes.Tests ?? int.MaxValue,
            Time = wishes.Time,
            PointsAnHour = AnHour(setup),
            Tests = season.TestDays.Select(test => new PlannedTest(test.Id, test.Day, IsDisplaced: false)).ToValueList(),
        };
        if (wishes.Stands is not { } agreed || read.Tests.Count == 0) return read;
        var then = Of(agreed, setup, new Wishes());
        return read with { Tests = read.Tests.Select(test => test with { IsDisplaced = !(test.Day < wishes.From) && !TestDays.IsLeft(read, test.Day) && TestDays.IsLeft(then, test.Day) }).ToValueList() };
    }

    private static ValueList<int> LevelsOf(Season season, Setup setup, SeasonWeek week) => Enumerable.Range(0, (int)QualityKind.Prevention)
        .Select(kind => setup.Qualities.FirstOrDefault(quality => quality.Kind == (QualityKind)kind) is { } quality ? (int)season.EmphasisOf(week.Id, quality.Id) : 0).ToValueList();

    private static double AnHour(Setup setup)
    {
        var usual = setup.UsualWeek;
        var minutes = new[] { usual.Practices, usual.Gym, usual.Conditioning }.Sum(sessions => sessions.Count * sessions.Minutes.Value);
        return minutes == 0 ? 1 : 100.0 * usual.Load.Au / setup.ReferenceWeek.Au * 60 / minutes;
    }

    private static StartLevel StartOf(Setup setup) => setup.RuleParameter(new RuleParameter("return-after-break-volume", "season_start")) switch
    {
        "off" => StartLevel.Off,
        "kept" => StartLevel.Kept,
        _ => StartLevel.Home,
    };

    private static IEnumerable<PlannedWeek> WeeksOf(Season season, Setup setup, Wishes wishes, Points points)
    {
        var (events, planned) = (season.Events.Where(Reads).ToList(), wishes.Stands?.Events.Where(Reads).ToList() ?? []);
        var said = wishes.Weeks.GroupBy(wish => wish.Week).ToDictionary(wish => wish.Key, wish => wish.Last());
        var stands = wishes.Kept.GroupBy(wish => wish.Week).ToDictionary(wish => wish.Key, wish => wish.Last());
        var disrupted = season.Weeks.Where(week => wishes.Disrupted.Contains(week.Id)).Select(week => week.Number).ToList();
        var off = 0;
        foreach (var week in season.Weeks)
        {
            var matches = season.MatchesIn(week).Where(match => !match.IsOff).Select(match => Planned(match, week, setup)).OrderBy(match => match.Day).ToValueList();
            var availability = Availability(week, events);
            // Practices that were entered before a week was lost do not take place.
            var practice = WeekLoad.Of(season, setup, week).Practice is { } entered ? availability == 0 ? 0 : points.Of(entered) : (int?)null;
            var (wish, isPast) = (said.GetValueOrDefault(week.Id), week.Days.First < wishes.From);
            var isLeft = !isPast && !season.IsLocked(week.Id) && wishes.Reach is { } reach && !disrupted.Exists(other => reach.Opens(week.Number, other));
            var isSettled = isPast || season.IsLocked(week.Id) || isLeft;
            // A week that has begun, or is locked, and was lost since holds its matches and nothing of what was planned.
            var wasLost = isSettled && wish is null && wishes.Stands is not null && availability < PlannedWeek.BreakBelow && Availability(week, planned) >= PlannedWeek.BreakBelow;
            var load = points.Of(matches.Sum(match => (long)match.Au));
            var held = LockOf(season, week, wish, isSettled, points);
            var read = new PlannedWeek(week.Number - 1, week.Id, week.Days.First, week.Days.Length, availability, matches,
                load, practice, off, wasLost ? new WeekLock(held?.Phase, matches.Count > 0 ? WeekKind.Reduced : WeekKind.Break, load) : held,
                stands.TryGetValue(week.Id, out var kept) ? Fixed(kept.Phase, kept.Kind, kept.Load, points) : null, isSettled && wish is null, week.Days.Days().Where(day => Left(day, events) == 0).ToValueList())
            { IsLeft = isLeft };
            off = read.IsOff ? off + read.Days : 0;
            yield return read;
        }
    }

    /// <summary>A match loads the week it is sure to be played in; so does the rulebook count.</summary>
    private static PlannedMatch Planned(Match match, SeasonWeek week, Setup setup) => new(
        match.Id,
        match.Day!.Value.DayNumber - week.Days.First.DayNumber + 7 - week.Days.Length,
        match.Day.Value,
        match.Importance,
        match.Days!.Value.Last <= week.Days.Last ? setup.MatchLoad.Of(match).Au : 0);

    /// <summary>The mean over the week's days of what the day's events leave, the strictest of a day counting.</summary>
    private static int Availability(SeasonWeek week, List<Event> events)
    {
        var sum = 0;
        foreach (var day in week.Days.Days()) sum += Left(day, events);
        return sum / week.Days.Length;
    }

    /// <summary>Whether a plan goes by an event: somebody said what is left of the training, for everyone and whole days.</summary>
    internal static bool Reads(Event item) => item is { Training: not null, For: null, Part: null };

    /// <summary>The share of training that events leave of a day, in per cent.</summary>
    private static int Left(DateOnly day, List<Event> events) => events.Where(item => item.Days.Contains(day)).Select(item => item.Training!.Value.Value).DefaultIfEmpty(100).Min();

    private static WeekLock? LockOf(Season season, SeasonWeek week, WeekWish? wish, bool isSettled, Points points)
    {
        var phase = wish?.Phase ?? (isSettled ? season.PhaseOf(week)?.Phase.Kind : null);
        var kind = wish?.Kind ?? (isSettled ? season.KindOf(week.Id) : null);
        var load = wish?.Load ?? (isSettled ? season.TargetOf(week.Id) : null);
        return Fixed(phase, kind, load, points);
    }

    private static WeekLock? Fixed(PhaseKind? phase, WeekKind? kind, Load? load, Points points) => phase is null && kind is null && load is null ? null
        : new WeekLock(phase == PhaseKind.Peak ? PhaseKind.Competition : phase, kind, load is { } au ? points.Of(au) : null);

    private static IEnumerable<Cycle> CyclesOf(ValueList<PlannedWeek> weeks, int apart)
    {
        var official = weeks.Where(week => week.OfficialMatches > 0).Select(week => week.Index).ToList();
        var start = 0;
        for (var i = 0; i < official.Count;)
        {
            var last = i;
            while (last + 1 < official.Count && official[last + 1] - official[last] <= apart) last++;
            yield return new Cycle(start, official[i], official[last]);
            start = official[last] + 1;
            i = last + 1;
        }
        if (official.Count == 0) yield return new Cycle(0, weeks.Count, weeks.Count - 1);
    }

    /// <summary>What a season without goals of its own is planned for. Common practice, no source.</summary>
    private static readonly ValueList<PlannedGoal> UsualGoals = [new(QualityKind.MaximumStrength, 50), new(QualityKind.Power, 30), new(QualityKind.HighIntensityConditioning, 20)];

    /// <summary>Up to three qualities by the goals' rank; two goals of one quality count together, the coach's own and prevention are not solved.</summary>
    private static ValueList<PlannedGoal> GoalsOf(Season season, Setup setup)
    {
        var kinds = season.Goals.Select(goal => setup.Qualities.FirstOrDefault(quality => quality.Id == goal.Quality)?.Kind)
            .OfType<QualityKind>().Where(kind => kind < QualityKind.Prevention).Take(3).ToList();
        if (kinds.Count == 0) return UsualGoals;
        return kinds.Zip(Weights[kinds.Count - 1], (kind, weight) => (Kind: kind, Weight: weight))
            .GroupBy(goal => goal.Kind).Select(goals => new PlannedGoal(goals.Key, goals.Sum(goal => goal.Weight))).ToValueList();
    }
}
