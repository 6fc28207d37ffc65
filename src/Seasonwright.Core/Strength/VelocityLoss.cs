namespace Seasonwright.Core.Strength;

/// <summary>How much slower repetitions have become within a set: a set may be ended once so much is lost.</summary>
/// <remarks>Sanchez-Medina L, Gonzalez-Badillo JJ 2011, Med Sci Sports Exerc 43(9):1725-1734 (from memory), there from the fastest repetition, too.</remarks>
public static class VelocityLoss
{
    /// <summary>Share of the best velocity so far that the last repetition lacks, 0 to 1; null without repetitions.</summary>
    /// <param name="velocities">Of the set's repetitions in order, m/s, above 0.</param>
    public static double? Of(IReadOnlyCollection<double> velocities) => velocities.Count == 0 ? null : 1 - velocities.Last() / velocities.Max();

    /// <summary>The first repetition, from 1, after which the set ends: the loss has reached the stop. Null where it has not.</summary>
    /// <param name="stop">Share, above 0 and below 1.</param>
    public static int? EndsAfter(IReadOnlyList<double> velocities, double stop)
    {
        for (var count = 1; count <= velocities.Count; count++)
            // 0.8 of 1.00 has lost 20 %, whatever binary fractions make of it.
            if (Of([.. velocities.Take(count)]) >= stop - 1e-9) return count;
        return null;
    }
}
