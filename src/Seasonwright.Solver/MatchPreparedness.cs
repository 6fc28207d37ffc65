using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>How preparedness on one match follows from the weeks: the constant and, for every point of training in a week, its coefficient. In units of <see cref="Preparedness.PerMille"/>.</summary>
/// <param name="Week">Index of the match's week.</param>
public sealed record MatchPreparedness(PlannedMatch Match, int Week, long Constant, ValueList<long> Weeks)
{
    /// <summary>Preparedness for loads of training in points, one a week.</summary>
    public long Of(IReadOnlyList<int> training)
    {
        var sum = Constant;
        for (var week = 0; week < Weeks.Count; week++) sum += Weeks[week] * training[week];
        return sum;
    }
}
