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
}
