using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Strength;

/// <summary>How the load changes after a first set that was meant to be RPE 8, in small exercises (of single joints or arms).</summary>
/// <remarks>
/// Trial protocol in J Hum Kinet 2024;91:87-103, which gives whole ratings. A half takes the smaller of its neighbours' changes, which is ours.
/// </remarks>
public static class NextSet
{
    /// <summary>Kilograms more (below 0: less) for the next set; null below 5, which the protocol does not list.</summary>
    public static decimal? Change(Rpe reported) => reported.Value switch
    {
        10m => -5m,
        >= 9m => -2.5m,
        > 7m => 0m,
        > 6m => 2.5m,
        >= 5m => 5m,
        _ => null,
    };
}
