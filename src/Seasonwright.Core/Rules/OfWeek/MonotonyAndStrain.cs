namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Seven daily loads (rest days as 0) per athlete; own previous 6 weeks.</summary>
internal static class MonotonyAndStrain
{
    public static readonly Figure Sd = Figure.Choice("sd", "sample", "population");
    public static readonly Figure CautionM = Figure.Number("caution_m", 1.5m, FigureUnit.Count);
    public static readonly Figure WarningM = Figure.Number("warning_m", 2, FigureUnit.Count);
    public static readonly Figure StrainFactor = Figure.Number("strain_factor", 1.5m, FigureUnit.Count);
    public static readonly Figure MinDaysLogged = Figure.Number("min_days_logged", 5, FigureUnit.Count);
    public static readonly Figure BaselineWeeks = Figure.Number("baseline_weeks", 6, FigureUnit.Weeks);

    public static Rule Rule { get; } = new("monotony-and-strain")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Contested,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Foster1998],
        Figures = [Sd, CautionM, WarningM, StrainFactor, MinDaysLogged, BaselineWeeks, Figure.HighestSeverity],
        Needs = Needs.Sessions,
    };
}
