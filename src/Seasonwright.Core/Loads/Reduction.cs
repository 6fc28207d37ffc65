namespace Seasonwright.Core.Loads;

/// <summary>How far a load lies below what it is held against: for tapers and unloading weeks.</summary>
/// <remarks>As volume is cut in Bosquet L et al. 2007, Med Sci Sports Exerc 39(8):1358-1365.</remarks>
public static class Reduction
{
    /// <summary>0.4 for a cut of 40 %, negative for a rise; null where there is nothing to hold it against.</summary>
    /// <param name="loads">Of the easier weeks, in any unit.</param>
    /// <param name="reference">Of the weeks before, in the same unit.</param>
    public static decimal? Of(IReadOnlyCollection<decimal> loads, IReadOnlyCollection<decimal> reference) =>
        loads.Count > 0 && reference.Count > 0 && reference.Average() is > 0 and { } mean ? 1 - loads.Average() / mean : null;
}
