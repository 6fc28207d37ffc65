using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Per session: running distance, sprint metres, jump contacts, contact minutes; athlete's own 30-day maximum.</summary>
internal static class SingleExposureSpike
{
    public static readonly Figure CautionUp = Figure.Number("caution_up", 0.1m, FigureUnit.Share);
    public static readonly Figure WarningUp = Figure.Number("warning_up", 1, FigureUnit.Share);
    public static readonly Figure WindowDays = Figure.Number("window_days", 30, FigureUnit.Days);
    public static readonly Figure EnabledFor = Figure.Words("enabled_for", "run_distance");
    public static readonly Figure OptionalFor = Figure.Words("optional_for", "sprint_metres", "jump_contacts", "contact_minutes");

    public static Rule Rule { get; } = new("single-exposure-spike")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Frandsen2025],
        Figures = [CautionUp, WarningUp, WindowDays, EnabledFor, OptionalFor],
        Needs = Needs.Sessions | Needs.Reports,
    };
}
