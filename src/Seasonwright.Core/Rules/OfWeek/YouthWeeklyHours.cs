using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Athlete age; organised hours per week (all sports if known).</summary>
internal static class YouthWeeklyHours
{
    public static readonly Figure YouthAge = Figure.Number("youth_age", 18, FigureUnit.Count);
    public static readonly Figure SoftCapH = Figure.Number("soft_cap_h", 16, FigureUnit.Hours);
    public static readonly Figure HoursPerYearOfAge = Figure.Number("hours_per_year_of_age", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-weekly-hours")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Nata2019, Sources.DiFiori2014, Sources.Aap2024],
        Figures = [YouthAge, SoftCapH, HoursPerYearOfAge],
        Needs = Needs.Squad | Needs.Sessions,
        IsForYouth = true,
    };

    /// <param name="age">Whole years.</param>
    /// <param name="hours">Organised ones in the week, all sports that are known.</param>
    public static Severity? Judge(int age, decimal hours, Figures figures) =>
        age >= figures.Number(YouthAge) ? null
        : hours > age * figures.Number(HoursPerYearOfAge) ? Severity.Warning
        : hours > figures.Number(SoftCapH) ? Severity.Caution
        : null;
}
