namespace Seasonwright.Solver;

/// <summary>The ways to go on from a stand: every move with every load of the grid that its conditions allow, or, where broken conditions are paid for, that its kind does.</summary>
internal sealed class Options(Problem problem, Relaxed relaxed, bool pays)
{
    private readonly Demands demands = new(problem, relaxed);
    private readonly List<Move> moves = [];

    public void Of(WeekFacts week, Stand from, List<Option> options)
    {
        options.Clear();
        Moves.Of(problem, week, from, pays || relaxed.Has(Condition.Taper, week.Week.Index), moves);
        foreach (var move in moves) Add(week, from, move, options);
    }

    private void Add(WeekFacts week, Stand from, Move move, List<Option> options)
    {
        demands.Judge(week, from, move);
        if (demands.Broken.Count > 0 && !pays) return;
        var paid = demands.Broken.Sum(one => Price(one.Condition, 10 * one.Amount));
        // What all conditions allow, in whole points.
        var (low, high) = (demands.Range.Least, demands.Range.Most);
        foreach (var bound in demands.Loads) (low, high) = (Math.Max(low, (bound.Least + 9) / 10), Math.Min(high, bound.Most / 10));
        var (least, most) = pays ? (demands.Range.Least, demands.Range.Most) : (low, high);
        if (week.Week.Index < problem.FirstOpen && week.Week.Lock?.Points is { } done) (least, most, low, high) = (done, done, done, done);
        if (least > most) return;
        var fixed_ = Value.Fixed(week, from, move, demands.Run) - Value.ChangeOfKind(problem, week, move);
        var guide = Guide.Of(problem, week, move, demands.Run, demands.Training, demands.Ceiling, demands.Range.Least);
        if (!Moves.SetsLevel(week, move, demands.Ceiling))
        {
            // No later week reads this load: only its best matters.
            var best = Made(least);
            for (var points = least + 1; points <= most; points++)
                if (Made(points) is var one && one.Value > best.Value) best = one;
            options.Add(best);
            return;
        }
        for (var points = OnGrid(least); points <= most; points += Stand.Step) options.Add(Made(points));
        // Where the conditions leave no step of the grid, the load nearest to the guide stands for what they leave; so a fixed load off the grid is kept.
        if (low <= high && OnGrid(low) > high) options.Add(Made(Math.Clamp(guide / 10, low, high)));
        // A fixed load is kept where another condition gives way to it, too.
        if (pays && week.Week.Lock?.Points is { } locked && locked % Stand.Step != 0 && locked >= least && locked <= most && (low > high || OnGrid(low) <= high)) options.Add(Made(locked));
        if (week.Week.Kept?.Points is { } kept && kept % Stand.Step != 0 && kept >= low && kept <= high) options.Add(Made(kept));

        static int OnGrid(int points) => (points + Stand.Step - 1) / Stand.Step * Stand.Step;

        Option Made(int points)
        {
            var now = paid;
            if (pays)
                foreach (var bound in demands.Loads)
                    if (Math.Max(bound.Least - 10 * points, 10 * points - bound.Most) is > 0 and var beyond) now += Price(bound.Condition, beyond);
            var value = fixed_ + Value.Of(week, from, move, points, guide) - Value.ChangeOfLoad(problem, week, points) - now;
            return new(move, points, value, now, Moves.After(problem.Limits, week, from, move, demands.Ceiling, points, demands.Run));
        }
    }

    /// <param name="beyond">Tenths of a point or of a week.</param>
    private static long Price(Condition condition, int beyond) => Worth.Broken * condition.Weight * (100 + beyond) / 100;
}
