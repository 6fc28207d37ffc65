namespace Seasonwright.Solver;

/// <summary>
/// Stage A: phases, week kinds and first loads of a season, by an exact dynamic programme over its weeks. Every plan that keeps the
/// conditions, on its grid of loads, is looked at; the best one is returned, the first found of equals.
/// </summary>
/// <param name="budget">The most that may be paid for broken conditions, in units; 0 for a search that refuses to break any.</param>
internal sealed class StructureSearch(Problem problem, Relaxed relaxed, long budget)
{
    private readonly bool pays = budget > 0;
    private readonly WeekFacts[] facts = SeasonFacts.Of(problem);
    private readonly Demands demands = new(problem, relaxed);
    private readonly List<Move> moves = [];
    private readonly int[] places = new int[Stand.Keys];

    /// <summary>Moves looked at, for measuring.</summary>
    public long Looked { get; private set; }

    /// <summary>The steps of the best plan, one a week; null when none keeps the conditions.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled; asked once a week.</exception>
    public List<Taken>? Best(CancellationToken cancel)
    {
        Array.Fill(places, -1);
        var layers = new List<Layer>();
        var from = new Layer();
        from.Add(Stand.Before(problem), default);
        foreach (var week in facts)
        {
            cancel.ThrowIfCancellationRequested();
            var next = Follow(from, week);
            layers.Add(next);
            from = next;
        }
        return Trace(layers);
    }

    private Layer Follow(Layer from, WeekFacts week)
    {
        var next = new Layer();
        for (var at = 0; at < from.Stands.Count; at++)
        {
            var stand = from.Stands[at];
            Moves.Of(problem, week, stand, pays, moves);
            foreach (var move in moves) Try(next, week, stand, at, from.Best[at], move);
        }
        foreach (var stand in next.Stands) places[stand.Key] = -1;
        return next;
    }

    private void Try(Layer next, WeekFacts week, Stand from, int at, Taken before, Move move)
    {
        demands.Judge(week, from, move);
        var worth = before.Value + Value.Fixed(week, from, move, demands.Run);
        var paid = before.Paid;
        foreach (var (condition, amount) in demands.Broken) paid += Price(condition, 10 * amount);
        if (paid > budget) return;
        // What all conditions allow, in whole points.
        var (low, high) = (demands.Range.Least, demands.Range.Most);
        foreach (var (_, above, below, _) in demands.Loads) (low, high) = (Math.Max(low, (above + 9) / 10), Math.Min(high, below / 10));
        var (least, most) = pays ? (demands.Range.Least, demands.Range.Most) : (low, high);
        var isFact = week.Week.Index < problem.FirstOpen;
        if (isFact && week.Week.Lock is { Points: { } done }) (least, most, low, high) = (done, done, done, done);
        if (least > most) return;
        var guide = Guide.Of(problem, week, move, demands.Run, demands.Training, demands.Ceiling, demands.Range.Least);
        if (!Moves.SetsLevel(week, move, demands.Ceiling))
        {
            var (bestPoints, best) = (0, (Value: long.MinValue, Paid: 0L));
            for (var points = least; points <= most; points++)
                if (Worth(points) is var one && one.Value > best.Value) (bestPoints, best) = (points, one);
            Add(bestPoints, best, from.Level);
            return;
        }
        for (var points = OnGrid(least); points <= most; points += Stand.Step) Offer(points);
        // Where the conditions leave no step of the grid, the load nearest to the guide stands for what they leave; so a fixed load off the grid is kept.
        if (low <= high && OnGrid(low) > high) Offer(Math.Clamp(guide / 10, low, high));

        static int OnGrid(int points) => (points + Stand.Step - 1) / Stand.Step * Stand.Step;

        void Offer(int points) => Add(points, Worth(points), Stand.LevelOf(points));

        (long Value, long Paid) Worth(int points)
        {
            Looked++;
            var now = paid;
            if (pays)
                foreach (var (condition, low, high, _) in demands.Loads)
                    if (Math.Max(low - 10 * points, 10 * points - high) is > 0 and var beyond) now += Price(condition, beyond);
            return (worth + Value.Of(week, from, move, points, guide) - (now - before.Paid), now);
        }

        void Add(int points, (long Value, long Paid) worth, int level)
        {
            if (worth.Paid > budget) return;
            var stand = Moves.After(week, from, move, level, demands.Run);
            var taken = new Taken(move, points, worth.Value, worth.Paid, at);
            if (places[stand.Key] is >= 0 and var place)
            {
                if (taken.Value > next.Best[place].Value) next.Best[place] = taken;
            }
            else
            {
                places[stand.Key] = next.Stands.Count;
                next.Add(stand, taken);
            }
        }
    }

    /// <param name="beyond">Tenths of a point or of a week.</param>
    private static long Price(Condition condition, int beyond) => Solver.Worth.Broken * condition.Weight * (100 + beyond) / 100;

    private static List<Taken>? Trace(List<Layer> layers)
    {
        if (layers.Count == 0 || layers[^1].Stands.Count == 0) return null;
        var at = 0;
        for (var i = 1; i < layers[^1].Best.Count; i++)
            if (layers[^1].Best[i].Value > layers[^1].Best[at].Value) at = i;
        List<Taken> path = [];
        for (var week = layers.Count - 1; week >= 0; week--)
        {
            path.Add(layers[week].Best[at]);
            at = layers[week].Best[at].From;
        }
        path.Reverse();
        return path;
    }

    /// <summary>The stands that can be reached after a week, with the best way to each, in the order they were found.</summary>
    private sealed class Layer
    {
        public List<Stand> Stands { get; } = [];

        public List<Taken> Best { get; } = [];

        public void Add(Stand stand, Taken taken)
        {
            Stands.Add(stand);
            Best.Add(taken);
        }
    }
}
