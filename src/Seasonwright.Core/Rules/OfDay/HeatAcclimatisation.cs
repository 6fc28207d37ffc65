using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Day number of the first 14 consecutive days of pre-season (or after arriving in heat); sessions, minutes, gaps, kit level; warm-season flag.</summary>
internal static class HeatAcclimatisation
{
    public static readonly Figure Days = Figure.Number("days", 14, FigureUnit.Days);
    public static readonly Figure Phase1Days = Figure.Number("phase1_days", 5, FigureUnit.Days);
    public static readonly Figure DayMaxMin = Figure.Number("day_max_min", 180, FigureUnit.Minutes);
    public static readonly Figure WalkMaxMin = Figure.Number("walk_max_min", 60, FigureUnit.Minutes);
    public static readonly Figure GapMin = Figure.Number("gap_min", 180, FigureUnit.Minutes);
    public static readonly Figure DoubleMaxMin = Figure.Number("double_max_min", 300, FigureUnit.Minutes);
    public static readonly Figure Kit12 = Figure.Words("kit.1-2", "helmet only");
    public static readonly Figure Kit35 = Figure.Words("kit.3-5", "helmet and shoulder pads");
    public static readonly Figure Kit6Up = Figure.Words("kit.6_up", "full");
    public static readonly Figure YouthSeverity = Figure.Choice("youth_severity", "stop", "caution", "warning");
    public static readonly Figure AdultSeverity = Figure.Choice("adult_severity", "warning", "caution", "stop");

    public static Rule Rule { get; } = new("heat-acclimatisation")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Casa2009, Sources.HeatDayByDay2009],
        Figures = [Days, Phase1Days, DayMaxMin, WalkMaxMin, GapMin, DoubleMaxMin, Kit12, Kit35, Kit6Up, YouthSeverity, AdultSeverity],
        Needs = Needs.Sessions | Needs.Weather,
        Releasers = [StaffRole.Doctor],
    };
}
