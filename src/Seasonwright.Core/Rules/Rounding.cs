namespace Seasonwright.Core.Rules;

/// <summary>Rules judge the figures that people see: a cut of 29.6 % is shown, and judged, as 30 %.</summary>
internal static class Rounding
{
    /// <summary>A share or ratio to two places.</summary>
    public static decimal AsShown(this decimal share) => Math.Round(share, 2, MidpointRounding.AwayFromZero);

    /// <summary>A share as whole per cent.</summary>
    public static decimal AsPercent(this decimal share) => Math.Round(100 * share, MidpointRounding.AwayFromZero);
}
