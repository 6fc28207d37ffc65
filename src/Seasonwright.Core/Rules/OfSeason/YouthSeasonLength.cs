using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Athlete age; dates of organised training or matches in this sport over the trailing 12 months.</summary>
internal static class YouthSeasonLength
{
    public static readonly Figure MaxMonths = Figure.Number("max_months", 8, FigureUnit.Count);
    public static readonly Figure MinOffMonths = Figure.Number("min_off_months", 2, FigureUnit.Count);
    public static readonly Figure MinSessionsMonth = Figure.Number("min_sessions_month", 4, FigureUnit.Count);
    public static readonly Figure YouthAge = Figure.Number("youth_age", 18, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-season-length")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Nata2019, Sources.Aap2000, Sources.DiFiori2014],
        Figures = [MaxMonths, MinOffMonths, MinSessionsMonth, YouthAge],
        Needs = Needs.Squad | Needs.Sessions,
        IsForYouth = true,
    };
}
