using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Countable hours per athlete: training, meetings tagged countable, matches (fixed hours), per day and per week; season state.</summary>
internal static class WeeklyHoursPreset
{
    public static readonly Figure Preset = Figure.Choice("preset", "off", "us_college");
    public static readonly Figure UsCollegeDayH = Figure.Number("us_college.day_h", 4, FigureUnit.Hours);
    public static readonly Figure UsCollegeWeekH = Figure.Number("us_college.week_h", 20, FigureUnit.Hours);
    public static readonly Figure UsCollegeDaysOff = Figure.Number("us_college.days_off", 1, FigureUnit.Days);
    public static readonly Figure UsCollegeOffWeekH = Figure.Number("us_college.off_week_h", 8, FigureUnit.Hours);
    public static readonly Figure UsCollegeOffDayH = Figure.Number("us_college.off_day_h", 2, FigureUnit.Hours);
    public static readonly Figure UsCollegeOffDaysOff = Figure.Number("us_college.off_days_off", 2, FigureUnit.Days);
    public static readonly Figure UsCollegeMatchCountsH = Figure.Number("us_college.match_counts_h", 3, FigureUnit.Hours);
    public static readonly Figure UsCollegeAfterMatchAllowed = Figure.YesNo("us_college.after_match_allowed", false);

    public static Rule Rule { get; } = new("weekly-hours-preset")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.NcaaHours, Sources.NcaaCountable],
        Figures = [Preset, UsCollegeDayH, UsCollegeWeekH, UsCollegeDaysOff, UsCollegeOffWeekH, UsCollegeOffDayH, UsCollegeOffDaysOff, UsCollegeMatchCountsH, UsCollegeAfterMatchAllowed, Figure.PresetDate],
        Needs = Needs.Sessions,
        OnlyBy = Preset,
        Releasers = [StaffRole.Management],
    };
}
