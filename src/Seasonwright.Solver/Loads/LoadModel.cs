using Google.OrTools.Sat;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>
/// The loads of a structure as a linear model in whole points. Each condition may be passed by points that are paid for, so that
/// there always are loads, and what was passed names what could not be kept.
/// </summary>
internal sealed class LoadModel
{
    /// <summary>Share of a per mille in which preparedness is counted here: the numbers stay far from the ends of 64 bits.</summary>
    private const long Fine = 1000;

    /// <summary>No week holds more, unless its matches, practices or what is locked in it do.</summary>
    private const long UsualMost = 400;

    private readonly Problem problem;
    private readonly Condition? kept;
    private readonly Comparison comparison;
    private readonly ValueList<StructureWeek> weeks;
    private readonly IntVar[] load;
    private readonly long largest;
    private readonly LinearExprBuilder value = LinearExpr.NewBuilder();
    private readonly List<(Condition Condition, int Week, LinearExpr Beyond)> paid = [];
    private readonly Dictionary<int, BoolVar> alone = [];

    public LoadModel(Problem problem, Structure structure)
        : this(problem, structure, (Condition?)null)
    {
        foreach (var week in weeks)
        {
            FromGuide(week);
            Keep(week);
            Model.AddHint(load[week.Index], Math.Clamp(problem.Weeks[week.Index].Kept?.Points ?? week.Points, RangeOf(week).Least, RangeOf(week).Most));
            if (!IsFact(week)) Conditions(week);
        }
        Prepared();
        Model.Maximize(value);
    }

    /// <summary>Asks only whether any loads keep one condition: all the others may be broken without end.</summary>
    public LoadModel(Problem problem, Structure structure, Breach kept)
        : this(problem, structure, kept.Condition) => Conditions(weeks[kept.Week]);

    private LoadModel(Problem problem, Structure structure, Condition? kept)
    {
        (this.problem, this.kept, weeks, comparison) = (problem, kept, structure.Weeks, new Comparison(problem, structure));
        var ranges = weeks.Select(RangeOf).ToList();
        load = [.. ranges.Select((range, week) => Model.NewIntVar(range.Least, range.Most, $"load{week}"))];
        largest = Math.Max(UsualMost, ranges.Select(range => range.Most).Concat(problem.Weeks.Select(week => week.Kept?.Points ?? 0)).DefaultIfEmpty().Max());
    }

    public CpModel Model { get; } = new();

    public ValueList<int> Points(Func<IntVar, long> value) => load.Select(week => (int)value(week)).ToValueList();

    public ValueList<Breach> Short(CpSolver solver) => paid.Select(one => new Breach(one.Condition, one.Week, 10 * (int)solver.Value(one.Beyond)))
        .Where(one => one.Beyond > 0).OrderBy(one => one.Week).ToValueList();

    /// <summary>What has happened and what is locked is a fact; no other week passes the largest.</summary>
    private Limits.Range RangeOf(StructureWeek week)
    {
        var planned = problem.Weeks[week.Index];
        if (planned.Lock?.Points is { } locked && !problem.LeftOut.Has(Condition.LockedLoad, week.Index)) return new(locked, locked);
        if (week.Index < problem.FirstOpen) return new(week.Points, week.Points);
        // A week back, and one of several matches, may be lighter than its kind is elsewhere: the practice that is assumed gives way.
        var gives = planned.PracticePoints is null && (comparison.CeilingOf(week.Index) is not null || planned.Matches.Count > 1);
        var least = gives ? Math.Min(week.Range.Least, planned.MatchPoints + KindTable.Ours(planned, week.Kind, week.Variant, week.Phase).Least) : week.Range.Least;
        // Nobody fills the week of a key match, tapered for or not.
        var usual = week.Kind == WeekKind.Competition && planned.HasKeyMatch ? Math.Max(week.Guide / 10, planned.Lock?.Points ?? 0) : UsualMost;
        return new(least, IsFilled(week) ? least : (int)Math.Max(least, Math.Min(Math.Min(week.Range.Most, MostOf(week)), usual)));
    }

    /// <summary>Whether the matches and the entered practices of a week alone go beyond a condition: then nothing of ours comes on top.</summary>
    private bool IsFilled(StructureWeek week) => problem.Weeks[week.Index].PracticePoints is { } practice && week.Range.Least == problem.Weeks[week.Index].MatchPoints + practice
        && week.Bounds.Any(bound => bound.IsForced && bound.Most <= 10 * week.Range.Least);

    private int MostOf(StructureWeek week) => (int)Math.Min(
        problem.LeftOut.Has(Condition.LargestWeek, week.Index) ? UsualMost : problem.LargestWeek,
        problem.LeftOut.Has(Condition.TrainingTime, week.Index) ? UsualMost : problem.Weeks[week.Index].MatchPoints + (long)problem.MostTraining(week.Phase));

    private void Conditions(StructureWeek week)
    {
        Rise(week);
        AgainstFour(week);
        Cut(week);
        Congested(week);
        Back(week);
        Progress(week);
    }

    private bool IsFact(StructureWeek week) => week.Index < problem.FirstOpen;

    private LinearExpr Training(int week) => load[week] - problem.Weeks[week].MatchPoints;

    private LinearExpr Training(IEnumerable<int> of) => LinearExpr.Sum(of.Select(Training));

    /// <summary>weekly-ramp: from the last comparable week by points and by a share, whichever is less; not in the first two weeks back.</summary>
    private void Rise(StructureWeek week)
    {
        if (!comparison.IsTraining(week.Index) || comparison.SinceAbsence(week.Index) < Comparison.WeeksBack || comparison.Reference(week.Index) is not { } before) return;
        var beyond = Paid(Condition.Ramp, week);
        Model.Add(load[week.Index] <= load[before] + problem.Limits.RampPoints + beyond);
        Model.Add(1000 * load[week.Index] <= (1000 + problem.Limits.RampShare) * load[before] + 1000 * beyond);
    }

    /// <summary>trailing-four-spike and base-load-low: against the weeks before, once enough have passed since an absence.</summary>
    private void AgainstFour(StructureWeek week)
    {
        var count = problem.Limits.TrailingWeeks;
        var trained = comparison.TrainedBefore(week.Index, count);
        if (!comparison.IsTraining(week.Index) || trained.Count < count || comparison.SinceAbsence(week.Index) < count) return;
        var before = LinearExpr.Sum(trained.Select(other => load[other]));
        Model.Add(1000 * count * load[week.Index] <= problem.Limits.TrailingRatio * before + 1000 * count * Paid(Condition.Spike, week));
        var first = problem.Weeks[week.Index].First;
        if (!problem.Weeks.SelectMany(other => other.Matches).Any(match => match.IsOfficial && match.Date >= first && match.Date.DayNumber - first.DayNumber < problem.Limits.LookAheadDays)) return;
        Model.Add(1000 * before + 1000 * Paid(Condition.Base, week, Worth.ShortOfBase) >= (long)problem.Limits.BaseShare * count * problem.Limits.TypicalPoints);
    }

    /// <summary>unloading-size and taper-volume: the training against that of the last normal weeks, like with like.</summary>
    private void Cut(StructureWeek week)
    {
        var limits = problem.Limits;
        if (week.Kind == WeekKind.Unloading)
        {
            var (before, kept) = (comparison.NormalBefore(week.Index, Comparison.WeeksBeforeUnloading), comparison.IsCompetition(week.Index) ? limits.UnloadingInCompetition : limits.Unloading);
            Share(Condition.UnloadingSize, week, [week.Index], before, kept);
            // A squad feels the cut from its last week, not from a mean: of that it is asked as well, for less.
            if (before.Count == 0) return;
            var beyond = Model.NewIntVar(0, largest, $"unloaded{week.Index}");
            Model.Add(1000 * Training(week.Index) <= kept.Most * Training(before[0]) + 1000 * beyond);
            value.AddTerm(beyond, -Worth.LittleUnloading);
        }
        else if (week is { Kind: WeekKind.Taper, Variant: not Variant.FullEarlier })
        {
            var taper = week.Variant == Variant.FullLast ? comparison.TaperTo(week.Index) : [week.Index];
            Share(Condition.TaperSize, week, taper, comparison.NormalBefore(taper[0], Comparison.WeeksBeforeTaper), taper.Count > 1 ? limits.FullTaper : limits.ShortTaper);
        }
    }

    private void Share(Condition condition, StructureWeek week, IReadOnlyList<int> eased, IReadOnlyList<int> before, Limits.Range kept)
    {
        if (before.Count == 0) return;
        var (mine, theirs) = (1000 * before.Count * Training(eased), eased.Count * Training(before));
        var beyond = 1000 * before.Count * eased.Count * Paid(condition, week);
        Model.Add(mine <= kept.Most * theirs + beyond);
        // Two matches and more are lighter still, and rightly; a lost week holds nothing.
        if (eased.All(other => problem.Weeks[other] is { Matches.Count: < 2, IsLost: false })) Model.Add(mine + beyond >= kept.Least * theirs);
    }

    /// <summary>heavy-week-in-congestion: the training against that of the last week with one match. A point is left: what two or three matches weigh is rounded here and not in the rulebook.</summary>
    private void Congested(StructureWeek week)
    {
        if (problem.Weeks[week.Index].Matches.Count < 2 || comparison.OneMatchWeekBefore(week.Index) is not { } usual) return;
        Model.Add(1000 * Training(week.Index) + 1000 <= problem.Limits.CongestedShare * Training(usual) + 1000 * Paid(Condition.LightCongestion, week));
    }

    /// <summary>return-after-break-volume: after a long absence in points or against the weeks before it, after a week off against the last ones; a match and a little beside it are always within.</summary>
    private void Back(StructureWeek week)
    {
        if (comparison.CeilingOf(week.Index) is not { } ceiling) return;
        var (matches, match) = (problem.Weeks[week.Index].Matches.Count, problem.Weeks[week.Index].MatchPoints + ceiling.Margin);
        var beyond = Paid(Condition.ReEntry, week, 2 * Worth.BeyondLoad);
        if (ceiling.Before.Count == 0)
        {
            Model.Add(load[week.Index] <= (matches > 0 ? Math.Max(ceiling.Points, match) : ceiling.Points) + beyond);
            return;
        }
        var scale = 1000 * ceiling.Before.Count;
        var most = ceiling.Share * LinearExpr.Sum(ceiling.Before.Select(other => load[other]));
        if (matches > 0)
        {
            var larger = Model.NewIntVar(scale * (long)match, scale * Math.Max(match, largest), $"back{week.Index}");
            Model.AddMaxEquality(larger, [most, LinearExpr.Constant(scale * (long)match)]);
            most = larger;
        }
        Model.Add(scale * load[week.Index] <= most + scale * beyond);
    }

    /// <summary>Planning preferences about the week before in the same block, and the level reached before a new one.</summary>
    private void Progress(StructureWeek week)
    {
        if (comparison.ProgressFrom(week.Index) is not var (condition, from, share, points)) return;
        Model.Add(1000 * load[week.Index] + 1000 * Paid(condition, week) >= share * load[from] + 1000 * points);
    }

    private void FromGuide(StructureWeek week)
    {
        var cost = Model.NewIntVar(0, Worth.FromGuide(10 * (int)largest), $"guide{week.Index}");
        foreach (var (slope, less) in Worth.GuideSlopes)
        {
            Model.Add(cost >= slope * (10 * load[week.Index] - week.Guide) - less);
            Model.Add(cost >= slope * (week.Guide - 10 * load[week.Index]) - less);
        }
        value.AddTerm(cost, -1);
        if (week.Kind != WeekKind.Competition || week.Index == 0 || weeks[week.Index - 1].Kind != WeekKind.Competition) return;
        var change = Model.NewIntVar(0, largest, $"change{week.Index}");
        Model.Add(change >= load[week.Index] - load[week.Index - 1]);
        Model.Add(change >= load[week.Index - 1] - load[week.Index]);
        value.AddTerm(change, -Worth.Change);
    }

    /// <summary>What it costs to leave the load that stands: every point, and more for more than a few.</summary>
    private void Keep(StructureWeek week)
    {
        if (problem.KeepWeight == 0 || IsFact(week) || problem.Weeks[week.Index].Kept?.Points is not { } kept) return;
        var (moved, isFar) = (Model.NewIntVar(0, largest, $"moved{week.Index}"), Model.NewBoolVar($"far{week.Index}"));
        Model.Add(moved >= load[week.Index] - kept);
        Model.Add(moved >= kept - load[week.Index]);
        Model.Add(moved <= Worth.FewPoints + largest * isFar);
        value.AddTerm(moved, -Worth.EveryPoint * problem.KeepWeight / 1000);
        value.AddTerm(isFar, -Worth.MoreThanFew * problem.KeepWeight / 1000);
    }

    /// <summary>Mean preparedness on the matches that count, and the worst on a key match.</summary>
    private void Prepared()
    {
        var matches = Preparedness.Of(problem);
        var key = matches.Where(match => match.Match.IsKey).ToList();
        Mean(key, Worth.MeanOnKeyMatches);
        Mean([.. matches.Where(match => !match.Match.IsKey)], key.Count > 0 ? Worth.PreparednessOnOthers : Worth.PreparednessOnKeyMatches);
        if (key.Count == 0) return;
        var worst = Model.NewIntVar(-1_000_000 * Fine, 1_000_000 * Fine, "worst");
        foreach (var match in key)
        {
            var sum = LinearExpr.NewBuilder();
            sum.Add(Rounded(match.Constant));
            foreach (var week in weeks) sum.AddTerm(Training(week.Index), Rounded(match.Weeks[week.Index]));
            Model.Add(worst <= sum);
        }
        value.AddTerm(worst, Worth.WorstOnKeyMatches / Fine);
    }

    private void Mean(List<MatchPreparedness> matches, long worth)
    {
        if (matches.Count == 0) return;
        value.Add((long)Math.Round(worth * matches.Sum(match => match.Constant / (double)Preparedness.PerMille) / matches.Count, MidpointRounding.AwayFromZero));
        foreach (var week in weeks)
        {
            var of = matches.Sum(match => match.Weeks[week.Index] / (double)Preparedness.PerMille);
            value.AddTerm(Training(week.Index), (long)Math.Round(worth * of / matches.Count, MidpointRounding.AwayFromZero));
        }
    }

    /// <summary>From billionths to thousandths of a per mille.</summary>
    private static long Rounded(long preparedness) => (long)Math.Round(preparedness * (double)Fine / Preparedness.PerMille, MidpointRounding.AwayFromZero);

    /// <summary>
    /// Points beyond a condition. Weeks of three matches and more, and weeks that entered practices fill, break things by themselves: there it is cheap, so that other weeks
    /// are not bent for them; so it is where practices are entered and nothing of ours comes on top.
    /// </summary>
    private LinearExpr Paid(Condition condition, StructureWeek week, long price = Worth.BeyondLoad)
    {
        var byFacts = problem.Weeks[week.Index].Matches.Count > 2 || IsFilled(week);
        var free = (int)Math.Min((problem.LeftOut.By(condition, week.Index) + 9L) / 10, 20 * largest);
        LinearExpr passed = Beyond("", byFacts ? Worth.BeyondByFacts : price);
        if (!byFacts && HoldsEntered(week))
        {
            var byPractice = Beyond("alone", Worth.BeyondByFacts);
            Model.Add(byPractice == 0).OnlyEnforceIf(Alone(week).Not());
            passed += byPractice;
        }
        paid.Add((condition, week.Index, passed));
        if (free > 0) passed += Model.NewIntVar(0, free, $"{condition.Name}{week.Index}eased");
        return passed;

        IntVar Beyond(string how, long each)
        {
            var beyond = Model.NewIntVar(0, condition == kept ? 0 : 20 * largest, $"{condition.Name}{week.Index}{how}");
            value.AddTerm(beyond, -each);
            return beyond;
        }
    }

    /// <summary>Whether the least that a week may hold is its matches and practices that are entered.</summary>
    private bool HoldsEntered(StructureWeek week) => problem.Weeks[week.Index].PracticePoints is { } practice && RangeOf(week).Least == problem.Weeks[week.Index].MatchPoints + practice;

    /// <summary>Whether a week holds its matches and entered practices alone.</summary>
    private BoolVar Alone(StructureWeek week)
    {
        if (alone.TryGetValue(week.Index, out var known)) return known;
        var holds = Model.NewBoolVar($"alone{week.Index}");
        Model.Add(load[week.Index] <= RangeOf(week).Least).OnlyEnforceIf(holds);
        return alone[week.Index] = holds;
    }
}
