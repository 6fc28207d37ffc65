namespace Seasonwright.Documents.Year;

/// <summary>Stacks things that would lie over each other: each goes into the uppermost lane that is free over its whole length.</summary>
internal sealed class Lanes
{
    private readonly List<List<(double From, double To)>> lanes = [];

    // Edges come from sums of widths; what lies within it is the same edge.
    private const double Touch = 0.01;

    public int Count => lanes.Count;

    /// <summary>Takes a stretch and tells its lane, from 0. Stretches that only touch do not overlap.</summary>
    public int Take(double from, double to)
    {
        var lane = lanes.FindIndex(taken => taken.TrueForAll(other => other.To <= from + Touch || to <= other.From + Touch));
        if (lane < 0)
        {
            lane = lanes.Count;
            lanes.Add([]);
        }
        lanes[lane].Add((from, to));
        return lane;
    }
}
