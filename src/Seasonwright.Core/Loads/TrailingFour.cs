namespace Seasonwright.Core.Loads;

/// <summary>A week's load against the mean of the weeks before it, itself left out: a plain description of change, no prediction.</summary>
/// <remarks>Uncoupled as Lolli L et al. 2019, Br J Sports Med 53(15):921 ask; criticised as such by Impellizzeri FM et al. 2020, Sports Med.</remarks>
public static class TrailingFour
{
    /// <param name="week">AU of the week.</param>
    /// <param name="before">AU of the weeks before it, commonly four; null for one that is not known.</param>
    /// <returns>1 for no change; null where a week is not known, there is none, or they were all 0.</returns>
    public static decimal? Ratio(decimal week, IReadOnlyCollection<decimal?> before) =>
        before.Count > 0 && before.All(load => load is not null) && before.Average() is > 0 and { } mean ? week / mean : null;
}
