namespace Seasonwright.Solver;

/// <summary>
/// Stage A: phases, week kinds and first loads of a season, by an exact dynamic programme over its weeks. Every plan that keeps the
/// conditions, on its grid of loads, is looked at; the best one is returned, the first found of equals.
/// </summary>
/// <param name="budget">The most that may be paid for broken conditions, in units; 0 for a search that refuses to break any.</param>
internal sealed class StructureSearch(Problem problem, Relaxed relaxed, long budget)
{
    private readonly WeekFacts[] facts = SeasonFacts.Of(problem);
    private readonly Options options = new(problem, relaxed, pays: budget > 0);
    private readonly List<Option> found = [];
    private readonly int[] places = new int[Stand.Keys];

    /// <summary>The best plan; null when none keeps the conditions.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled; asked once a week.</exception>
    public Path? Best(CancellationToken cancel)
    {
        var layers = Forward(cancel);
        return layers is null ? null : Trace(layers, layers.Count - 1, layers[^1].First());
    }

    /// <summary>
    /// The best plan and others: of those that give some week another phase or kind than it does, for each week and move the best;
    /// best first, and none whose phases or kinds differ from those before it in fewer weeks than asked for. With one week the first
    /// of them is the second best shape there is.
    /// </summary>
    /// <exception cref="OperationCanceledException">The token was cancelled; asked twice a week.</exception>
    public List<Path> Several(int count, int weeksApart, CancellationToken cancel)
    {
        if (Forward(cancel) is not { } layers) return [];
        var best = Trace(layers, layers.Count - 1, layers[^1].First());
        List<Path> paths = [best];
        foreach (var path in Detours(layers, best, cancel).OrderByDescending(path => path.Value))
        {
            if (paths.Count >= count) break;
            if (paths.TrueForAll(other => other.WeeksApart(path) >= weeksApart)) paths.Add(path);
        }
        return paths;
    }

    /// <summary>The stands after each week with the best way to each; null where no plan gets to the end. The first layer is before the season.</summary>
    private List<Layer>? Forward(CancellationToken cancel)
    {
        if (facts.Length == 0) return null;
        Array.Fill(places, -1);
        var from = new Layer();
        from.Add(Stand.Before(problem), default);
        List<Layer> layers = [from];
        foreach (var week in facts)
        {
            cancel.ThrowIfCancellationRequested();
            var next = new Layer();
            for (var at = 0; at < from.Stands.Count; at++)
            {
                options.Of(week, from.Stands[at], found);
                foreach (var option in found)
                {
                    var (value, paid) = (from.Best[at].Value + option.Value, from.Best[at].Paid + option.Paid);
                    if (paid <= budget) Reach(next, option.After, new Taken(option.Move, option.Points, value, paid, at));
                }
            }
            Forget(next);
            layers.Add(next);
            from = next;
        }
        return from.Stands.Count > 0 ? layers : null;
    }

    private void Reach(Layer next, Stand stand, Taken taken)
    {
        if (places[stand.Key] is >= 0 and var place)
        {
            if (taken.Value > next.Best[place].Value) next.Best[place] = taken;
            return;
        }
        places[stand.Key] = next.Stands.Count;
        next.Add(stand, taken);
    }

    /// <summary>From the end back: what the best way on from each stand is worth, and by it the best plan through every move of every week that the best plan does not take.</summary>
    private List<Path> Detours(List<Layer> layers, Path best, CancellationToken cancel)
    {
        List<Path> detours = [];
        // What follows each stand of the layer after, and by which step.
        var after = layers[^1].Stands.ConvertAll(_ => new Onward(0, default, 0, -1));
        List<List<Onward>> onward = [after];
        for (var week = facts.Length - 1; week >= 0; week--)
        {
            cancel.ThrowIfCancellationRequested();
            var (from, to) = (layers[week], layers[week + 1]);
            for (var at = 0; at < to.Stands.Count; at++) places[to.Stands[at].Key] = at;
            var through = new Dictionary<Move, (long Value, int From, Option Option, int To)>();
            List<Onward> before = [];
            for (var at = 0; at < from.Stands.Count; at++)
            {
                var most = new Onward(long.MinValue, default, 0, -1);
                options.Of(facts[week], from.Stands[at], found);
                foreach (var option in found)
                {
                    var place = places[option.After.Key];
                    if (place < 0 || after[place].Value == long.MinValue) continue;
                    var value = option.Value + after[place].Value;
                    if (value > most.Value) most = new(value, option.Move, option.Points, place);
                    if (option.Move == best.Steps[week].Move) continue;
                    var whole = from.Best[at].Value + value;
                    if (!through.TryGetValue(option.Move, out var known) || whole > known.Value) through[option.Move] = (whole, at, option, place);
                }
                before.Add(most);
            }
            Forget(to);
            foreach (var (value, at, option, to_) in through.Values)
            {
                var steps = week == 0 ? [] : Trace(layers, week, at).Steps;
                steps.Add(new(option.Move, option.Points));
                for (var (later, place) = (onward.Count - 1, to_); later > 0; place = onward[later][place].To, later--) steps.Add(new(onward[later][place].Move, onward[later][place].Points));
                detours.Add(new(steps, value));
            }
            onward.Add(before);
            after = before;
        }
        return detours;
    }

    private void Forget(Layer layer)
    {
        foreach (var stand in layer.Stands) places[stand.Key] = -1;
    }

    /// <summary>The best way to one stand of one layer.</summary>
    private static Path Trace(List<Layer> layers, int layer, int at)
    {
        List<Path.Step> steps = [];
        var value = layers[layer].Best[at].Value;
        for (; layer > 0; layer--)
        {
            var taken = layers[layer].Best[at];
            steps.Add(new(taken.Move, taken.Points));
            at = taken.From;
        }
        steps.Reverse();
        return new(steps, value);
    }

    /// <summary>The best way on from a stand.</summary>
    private readonly record struct Onward(long Value, Move Move, int Points, int To);

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

        /// <summary>The place of the best of all, the first of equals.</summary>
        public int First()
        {
            var first = 0;
            for (var at = 1; at < Best.Count; at++)
                if (Best[at].Value > Best[first].Value) first = at;
            return first;
        }
    }
}
