using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Number of days or weeks logged; share of sessions with RPE; share of check-ins.</summary>
internal static class ThinDataGate
{
    public static readonly Figure NeedWeeks = Figure.Number("need_weeks", 4, FigureUnit.Weeks);
    public static readonly Figure NeedShare = Figure.Number("need_share", 0.8m, FigureUnit.Share);
    public static readonly Figure NeedCheckins = Figure.Number("need_checkins", 14, FigureUnit.Count);
    public static readonly Figure LowResponse = Figure.Number("low_response", 0.6m, FigureUnit.Share);

    public static Rule Rule { get; } = new("thin-data-gate")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.FromMemory,
        Sources = [Sources.Thornton2019],
        Figures = [NeedWeeks, NeedShare, NeedCheckins, LowResponse],
        Needs = Needs.Reports | Needs.CheckIns,
    };
}
