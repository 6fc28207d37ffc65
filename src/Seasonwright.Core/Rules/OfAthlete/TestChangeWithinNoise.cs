using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>New and old result; typical error of that test (own squad or entered); between-athlete SD.</summary>
internal static class TestChangeWithinNoise
{
    public static readonly Figure TeFactor = Figure.Number("te_factor", 1.5m, FigureUnit.Count);
    public static readonly Figure SwcFactor = Figure.Number("swc_factor", 0.2m, FigureUnit.Count);
    public static readonly Figure MinTePairs = Figure.Number("min_te_pairs", 10, FigureUnit.Count);

    public static Rule Rule { get; } = new("test-change-within-noise")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Caution,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Hopkins2000],
        Figures = [TeFactor, SwcFactor, MinTePairs],
        Needs = Needs.Results,
    };

    /// <summary>What a change of a test result tells.</summary>
    public enum Change
    {
        /// <summary>The test's typical error is not known.</summary>
        NoVerdict,
        NotClear,
        Clear,
    }

    /// <summary>All in the unit of the test. A change on the very limit is not clear.</summary>
    /// <param name="change">New less old.</param>
    /// <param name="typicalError">Of the test; null where nobody knows it.</param>
    /// <param name="squadDeviation">Standard deviation between athletes: a fifth of it is the smallest change that matters.</param>
    public static Change Judge(decimal change, decimal? typicalError, decimal squadDeviation, Figures figures)
    {
        if (typicalError is not { } error) return Change.NoVerdict;
        return Math.Abs(change) > figures.Number(TeFactor) * error && Math.Abs(change) >= figures.Number(SwcFactor) * squadDeviation ? Change.Clear : Change.NotClear;
    }
}
