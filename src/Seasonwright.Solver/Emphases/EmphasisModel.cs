using Google.OrTools.Sat;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>Levels of the qualities by block as a linear model: a level is the sum of the steps up to it.</summary>
internal sealed class EmphasisModel
{
    private const int Steps = (int)Emphasis.Focus, Hypertrophy = (int)QualityKind.Hypertrophy, Strength = (int)QualityKind.MaximumStrength, Power = (int)QualityKind.Power,
        Speed = (int)QualityKind.Speed, Direction = (int)QualityKind.ChangeOfDirection, Intensity = (int)QualityKind.HighIntensityConditioning, Aerobic = (int)QualityKind.AerobicConditioning;

    /// <summary>Of two qualities at most in one block.</summary>
    private const int MostFocus = 2;

    /// <summary>Hundredths of a per mille in which the stock of a quality is counted.</summary>
    private const long Fine = 100;

    private readonly Problem problem;
    private readonly Breach? kept;
    private readonly LoadPlan loads;
    private readonly bool isRepair;
    private readonly ValueList<StructureWeek> weeks;
    private readonly Comparison comparison;
    private readonly List<(int First, int Last)> blocks;
    private readonly BoolVar?[,,] step;
    private readonly LinearExprBuilder value = LinearExpr.NewBuilder();
    private readonly List<(Condition Condition, int Week, IntVar Beyond)> paid = [];
    private readonly List<(DateOnly Day, int Week, BoolVar Is)> tests = [];

    /// <param name="kept">A condition that may not be paid for: the model then only asks whether that can be.</param>
    public EmphasisModel(Problem problem, Structure structure, LoadPlan loads, Breach? kept = null)
    {
        (this.problem, this.kept, this.loads, weeks, comparison) = (problem, kept, loads, structure.Weeks, new Comparison(problem, structure));
        isRepair = problem.Weeks.Any(week => week.Kept is not null);
        blocks = [.. weeks.GroupBy(week => week.Block).Select(block => (block.First().Index, block.Last().Index))];
        step = new BoolVar?[blocks.Count, ExposureTable.Qualities, Steps];
        for (var block = 0; block < blocks.Count; block++) Levels(block);
        foreach (var week in weeks) Week(week);
        foreach (var week in weeks) Keep(week);
        var grounds = problem.Limits.Grounds;
        Ground(Power, Strength, grounds.Strength, _ => true);
        Ground(Strength, Hypertrophy, grounds.Base, preparation => comparison.DaysAwayBefore(preparation) >= grounds.LayoffDays);
        Changes();
        Stocks();
        var days = new TestDays(problem, structure, loads, comparison);
        Moved = days.Moved();
        foreach (var (day, week) in days.All()) tests.Add((day, week, Model.NewBoolVar($"test{week}")));
        Testing();
        if (kept is null) Model.Maximize(value);
    }

    public CpModel Model { get; } = new();

    public ValueList<ValueList<int>> Levels(CpSolver solver) =>
        weeks.Select(week => Enumerable.Range(0, ExposureTable.Qualities).Select(quality => Math.Min(Steps, Given(week, quality) + Within(week, quality).Sum(one => (int)solver.Value(one)))).ToValueList()).ToValueList();

    /// <inheritdoc cref="EmphasisPlan.Moved"/>
    public ValueList<MovedTest> Moved { get; }

    public ValueList<DateOnly> Tests(CpSolver solver) => tests.Where(test => solver.BooleanValue(test.Is)).Select(test => test.Day).ToValueList();

    public ValueList<Breach> Short(CpSolver solver) => paid.Select(one => new Breach(one.Condition, one.Week, (int)solver.Value(one.Beyond))).Where(one => one.Beyond > 0).ToValueList();

    /// <summary>
    /// What the coach has entered in a week that is settled is a fact, and what follows is judged by it. A settled week without any emphasis
    /// says nothing: it counts as one that went on like its block.
    /// </summary>
    private bool IsFact(StructureWeek week) => (week.Index < problem.FirstOpen || problem.Weeks[week.Index].IsSettled || problem.Stays(week)) && !problem.Weeks[week.Index].WasLost && problem.Levels[week.Index].Any(level => level > 0);

    private int MatchesIn(StructureWeek week) => problem.Weeks[week.Index].Matches.Count;

    private bool Plans(int quality) => problem.Qualities.Contains((QualityKind)quality);

    /// <summary>The steps of its block that a week's kind leaves.</summary>
    private IEnumerable<BoolVar> Within(StructureWeek week, int quality)
    {
        if (IsFact(week)) yield break;
        var most = MostOf(week, quality);
        for (var level = 0; level < most; level++)
            if (step[week.Block, quality, level] is { } one) yield return one;
    }

    /// <summary>
    /// What a week's kind leaves of a quality; of a lost one nothing. Nobody develops anything on next to nothing: where practices leave less than a small session
    /// of ours, each quality is kept up at most. Common practice, no source.
    /// </summary>
    private int MostOf(StructureWeek week, int quality)
    {
        const int smallSession = 3;
        var planned = problem.Weeks[week.Index];
        if (planned.IsLost) return 0;
        var training = loads.Points[week.Index] - planned.MatchPoints;
        var ours = training - KindTable.Practice(problem, planned, week.Kind, week.Variant, training);
        return Math.Min(ExposureTable.Most(week.Kind, MatchesIn(week))[quality], ours < smallSession ? (int)Emphasis.Maintain : Steps);
    }

    /// <summary>What a week holds whatever its block does: what is entered of a settled one; in a match-free week of the competition high-intensity work stands in for the match.</summary>
    private int Given(StructureWeek week, int quality) =>
        IsFact(week) ? problem.Levels[week.Index][quality] : quality == Intensity && Plans(Intensity) && comparison.IsCompetition(week.Index) && week.Kind == WeekKind.Building && MatchesIn(week) == 0 ? 1 : 0;

    private LinearExpr Level(int block, int quality) => LinearExpr.Sum(Enumerable.Range(0, Steps).Select(level => step[block, quality, level]).OfType<BoolVar>());

    private void Levels(int block)
    {
        var (first, last) = blocks[block];
        var inside = weeks.Skip(first).Take(last - first + 1).Where(week => week.Kind != WeekKind.Break && !IsFact(week)).ToList();
        if (inside.Count == 0) return;
        var phase = inside[0].Phase;
        var isLate = comparison.IsCompetition(first) || problem.Weeks.SelectMany(week => week.Matches).Any(match => match.IsKey && match.Date > problem.Weeks[last].First
            && match.Date.DayNumber - (problem.Weeks[last].First.DayNumber + problem.Weeks[last].Days - 1) < problem.Limits.HypertrophyDays);
        for (var quality = 0; quality < ExposureTable.Qualities; quality++)
        {
            var most = !Plans(quality) ? 0 : quality == Hypertrophy && isLate ? 1 : ExposureTable.Most(phase, quality);
            if (comparison.IsCompetition(first)) most = Math.Min(most, 2);
            for (var level = 0; level < Math.Min(most, ExposureTable.Most(phase, quality)); level++)
            {
                step[block, quality, level] = Model.NewBoolVar($"b{block}q{quality}l{level + 1}");
                if (level > 0) Model.AddImplication(step[block, quality, level]!, step[block, quality, level - 1]!);
            }
        }
        Model.Add(LinearExpr.Sum(Enumerable.Range(0, ExposureTable.Qualities).Select(quality => step[block, quality, Steps - 1]).OfType<BoolVar>()) <= MostFocus);
        var isTransition = phase == PhaseKind.Transition;
        AtLeast(block, 1, Strength);
        if (!isTransition) AtLeast(block, 1, Speed);
        if (isTransition) AtLeast(block, 2, Aerobic);
        else AtLeast(block, comparison.IsCompetition(first) ? 1 : 2, Intensity, Aerobic);
        if (comparison.IsCompetition(first)) AtLeast(block, 1, Direction);
    }

    /// <summary>strength-frequency-in-season, sprint-exposure-gap, quality-left-idle, aerobic-upkeep, transition-without-upkeep: what every block keeps up.</summary>
    private void AtLeast(int block, int least, params int[] qualities)
    {
        var most = qualities.Sum(quality => Enumerable.Range(0, Steps).Count(level => step[block, quality, level] is not null));
        Model.Add(LinearExpr.Sum(qualities.Select(quality => Level(block, quality))) >= Math.Min(least, most));
    }

    private void Week(StructureWeek week)
    {
        if (week.Kind == WeekKind.Break || IsFact(week)) return;
        var all = LinearExpr.Sum(Enumerable.Range(0, ExposureTable.Qualities).SelectMany(quality => Within(week, quality)));
        var given = Enumerable.Range(0, ExposureTable.Qualities).Sum(quality => Given(week, quality));
        Model.Add(all <= MostOf(week) - given);
        if (week is { Kind: WeekKind.Taper, Variant: not Variant.FullEarlier }) KeepsUp(week);
        Aerobically(week);
        for (var quality = 0; quality < ExposureTable.Qualities; quality++)
        {
            var level = 0;
            foreach (var one in Within(week, quality)) value.AddTerm(one, -++level * Worth.Point);
            if (!week.Kind.IsLoading() || !Plans(quality) || MatchesIn(week) > 1) continue;
            // What is missing of the wish is paid for, what is beyond it is not.
            var wish = ExposureTable.Wish(week.Phase, quality);
            foreach (var one in Within(week, quality).Take(wish)) value.AddTerm(one, Worth.MissingExposure);
        }
    }

    /// <summary>What a kind of week holds, and what its days of training do: three exposures a day, and what every block keeps up in any case. Common practice, no source.</summary>
    private int MostOf(StructureWeek week)
    {
        const int inADay = 3, keptUp = 5;
        var most = ExposureTable.Sum(week.Kind, MatchesIn(week));
        return problem.DaysOf(week.Phase) is { } days && !problem.LeftOut.Has(Condition.TrainingTime, week.Index) ? Math.Min(most, Math.Max(keptUp, inADay * days)) : most;
    }

    /// <summary>What it costs to leave the emphasis that stands, by level and week.</summary>
    private void Keep(StructureWeek week)
    {
        if (problem.KeepWeight == 0 || !isRepair || week.Index < problem.FirstOpen) return;
        for (var quality = 0; quality < ExposureTable.Qualities; quality++)
        {
            var steps = Within(week, quality).ToList();
            if (steps.Count == 0) continue;
            var (stood, moved) = (problem.Levels[week.Index][quality] - Given(week, quality), Model.NewIntVar(0, Steps, $"moved{week.Index}q{quality}"));
            Model.Add(moved >= LinearExpr.Sum(steps) - stood);
            Model.Add(moved >= stood - LinearExpr.Sum(steps));
            value.AddTerm(moved, -Worth.EveryLevel * problem.KeepWeight / 1000);
        }
    }

    /// <summary>A week's exposures, its matches among them or, in a week without, its hardest session.</summary>
    private LinearExpr Efforts(int week) =>
        LinearExpr.Sum(Enumerable.Range(0, ExposureTable.Qualities).SelectMany(quality => Within(weeks[week], quality))) + (Enumerable.Range(0, ExposureTable.Qualities).Sum(quality => Given(weeks[week], quality)) + Math.Max(1, MatchesIn(weeks[week])));

    /// <summary>aerobic-upkeep: two hard efforts a week, matches included, as far as the week's kind leaves room.</summary>
    private void Aerobically(StructureWeek week)
    {
        if (week.Kind == WeekKind.Transition) return;
        var efforts = Within(week, Intensity).Concat(Within(week, Aerobic)).ToList();
        Model.Add(LinearExpr.Sum(efforts) >= Math.Min(efforts.Count, 2 - MatchesIn(week) - Given(week, Intensity)));
    }

    /// <summary>taper-intensity-frequency: a taper trains less, hardly less often.</summary>
    private void KeepsUp(StructureWeek week)
    {
        if (problem.LeftOut.Has(Condition.TaperFrequency, week.Index)) return;
        var taper = week.Variant == Variant.FullLast ? comparison.TaperTo(week.Index) : [week.Index];
        var before = comparison.NormalBefore(taper[0], problem.Limits.TaperReferenceWeeks);
        if (before.Count == 0) return;
        var missing = Model.NewIntVar(0, kept?.Week == week.Index ? 0 : 40, $"taper{week.Index}");
        value.AddTerm(missing, -Worth.BeyondLoad);
        paid.Add((Condition.TaperFrequency, week.Index, missing));
        // What the plan that stands left out already is not asked for.
        var eased = problem.LeftOut.By(Condition.TaperFrequency, week.Index);
        Model.Add(1000 * before.Count * (LinearExpr.Sum(taper.Select(Efforts)) + (missing + eased)) >= problem.Limits.TaperFrequency * taper.Count * LinearExpr.Sum(before.Select(Efforts)));
    }

    /// <summary>quality-order: within one preparation a quality is developed only on enough weeks that develop its ground.</summary>
    private void Ground(int quality, int ground, int least, Func<int, bool> asks)
    {
        var start = 0;
        for (var block = 0; block < blocks.Count; block++)
        {
            if (!IsPreparation(block)) continue;
            if (block == 0 || !IsPreparation(block - 1)) start = block;
            if (!asks(blocks[start].First) || step[block, quality, 1] is not { } developed) continue;
            var before = LinearExpr.NewBuilder();
            for (var other = start; other < block; other++)
                if (step[other, ground, 1] is { } one) before.AddTerm(one, WeeksThatDevelop(other, ground));
            var open = weeks.Skip(blocks[block].First).First(week => !IsFact(week)).Index;
            before.Add(weeks.Take(open).Skip(blocks[start].First).Count(week => IsFact(week) && Given(week, ground) >= (int)Emphasis.Develop));
            Model.Add(before >= least).OnlyEnforceIf(developed);
        }
    }

    private bool IsPreparation(int block) => weeks[blocks[block].First].Phase is PhaseKind.GeneralPreparation or PhaseKind.SpecificPreparation or PhaseKind.PreCompetition;

    private int WeeksThatDevelop(int block, int quality) =>
        weeks.Skip(blocks[block].First).Take(blocks[block].Last - blocks[block].First + 1).Count(week => !IsFact(week) && MostOf(week, quality) >= (int)Emphasis.Develop);

    /// <summary>Levels that change from one block to the next are paid for, less where the phase changes.</summary>
    private void Changes()
    {
        var trained = Enumerable.Range(0, blocks.Count).Where(block => weeks[blocks[block].First].Kind != WeekKind.Break).ToList();
        foreach (var (one, next) in trained.Zip(trained.Skip(1)))
        {
            var isSame = Label(one) == Label(next);
            for (var quality = 0; quality < ExposureTable.Qualities; quality++) Change(LevelOf(one, quality), LevelOf(next, quality), isSame);
        }
        // Where a block is under way its levels go on.
        foreach (var block in trained.Where(block => IsOpen(block) && Facts(block).Any()))
            for (var quality = 0; quality < ExposureTable.Qualities; quality++) Change(FactOf(block, quality), Level(block, quality), isSame: true);

        void Change(LinearExpr one, LinearExpr next, bool isSame)
        {
            var change = Model.NewIntVar(0, Steps, "change");
            Model.Add(change >= one - next);
            Model.Add(change >= next - one);
            value.AddTerm(change, -(isSame ? Worth.ChangeInPhase : Worth.ChangeOfPhase));
        }

        IEnumerable<StructureWeek> Facts(int block) => weeks.Skip(blocks[block].First).Take(blocks[block].Last - blocks[block].First + 1).Where(IsFact);

        bool IsOpen(int block) => Enumerable.Range(0, ExposureTable.Qualities).Any(quality => step[block, quality, 0] is not null);

        LinearExpr FactOf(int block, int quality) => LinearExpr.Constant(Facts(block).Max(week => Given(week, quality)));

        LinearExpr LevelOf(int block, int quality) => IsOpen(block) || !Facts(block).Any() ? Level(block, quality) : FactOf(block, quality);

        PhaseKind Label(int block) => weeks[blocks[block].First].Phase;
    }

    /// <summary>What the weeks leave of each goal's quality on the matches that count, up to a full stock.</summary>
    private void Stocks()
    {
        var aims = GoalValue.Aims(problem);
        foreach (var goal in problem.Goals.Where(goal => Plans((int)goal.Quality)))
            foreach (var aim in aims)
            {
                var quality = (int)goal.Quality;
                var stock = Model.NewIntVar(0, 1000 * Fine, $"stock{quality}d{aim}");
                var sum = LinearExpr.NewBuilder();
                foreach (var week in weeks)
                {
                    var days = aim - (problem.Weeks[week.Index].First.DayNumber + problem.Weeks[week.Index].Days / 2);
                    if (days <= 0) continue;
                    var left = (long)Math.Round(1000 * Fine * Math.Exp(-(double)days / GoalValue.Lasting[quality]) / GoalValue.Full(quality), MidpointRounding.AwayFromZero);
                    foreach (var one in Within(week, quality)) sum.AddTerm(one, left);
                    sum.Add(Given(week, quality) * left);
                }
                Model.Add(stock <= sum);
                value.AddTerm(stock, Math.Max(1, Worth.Stock * goal.Weight / 100 / aims.Count / Fine));
            }
    }

    /// <summary>Tests early, before the competition and now and then, never close together; those that stand count as well.</summary>
    private void Testing()
    {
        if (problem.MostTests < tests.Count) Model.Add(LinearExpr.Sum(tests.Select(test => test.Is)) <= problem.MostTests);
        foreach (var test in tests) value.AddTerm(test.Is, weeks[test.Week].Kind == WeekKind.Unloading ? Worth.TestInUnloading - Worth.Test : -Worth.Test);
        foreach (var test in tests)
        {
            if (Standing.Any(day => Math.Abs(day.DayNumber - test.Day.DayNumber) < 7 * TestDays.WeeksApart)) Model.Add(test.Is == 0);
            foreach (var later in tests.Where(later => later.Week > test.Week && later.Week - test.Week < TestDays.WeeksApart)) Model.AddBoolOr([test.Is.Not(), later.Is.Not()]);
        }
        Missing(0, TestDays.FirstWeeks - 1, Worth.NoFirstTest);
        foreach (var cycle in problem.Cycles.Where(cycle => cycle.First <= cycle.Last)) Missing(cycle.First - TestDays.WeeksBeforeCompetition, cycle.First, Worth.NoTestBeforeCompetition);
        for (var week = 0; week + TestDays.Window <= weeks.Count; week++) Missing(week, week + TestDays.Window - 1, Worth.NoTestInWindow);
    }

    /// <summary>Test days that stand, where they will be.</summary>
    private IEnumerable<DateOnly> Standing => problem.Tests.Select(test => Moved.FirstOrDefault(moved => moved.Id == test.Id)?.To ?? test.Day);

    private void Missing(int first, int last, long price)
    {
        if (Standing.Any(day => problem.Weeks.Any(week => week.Index >= first && week.Index <= last && week.Holds(day)))) return;
        var missing = Model.NewBoolVar($"untested{first}-{last}");
        Model.AddBoolOr([missing, .. tests.Where(test => test.Week >= first && test.Week <= last).Select(test => test.Is)]);
        value.AddTerm(missing, -price);
    }
}
