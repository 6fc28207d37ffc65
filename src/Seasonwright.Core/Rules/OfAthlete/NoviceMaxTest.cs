using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Planned one-repetition test; training age; age; technique sign-off; supervisor ratio.</summary>
internal static class NoviceMaxTest
{
    public static readonly Figure MinYears = Figure.Number("min_years", 0.5m, FigureUnit.Count);
    public static readonly Figure YouthAge = Figure.Number("youth_age", 16, FigureUnit.Count);
    public static readonly Figure Ratio = Figure.Number("ratio", 5, FigureUnit.Count);
    public static readonly Figure EstimateReps = Figure.Numbers("estimate_reps", FigureUnit.Count, 3, 10);

    public static Rule Rule { get; } = new("novice-max-test")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Faigenbaum2009, Sources.Faigenbaum2003, Sources.Nsca2017],
        Figures = [MinYears, YouthAge, Ratio, EstimateReps],
        Needs = Needs.Squad | Needs.Results,
    };
}
