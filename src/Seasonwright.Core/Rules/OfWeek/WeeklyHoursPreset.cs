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
        Looks = Looks,
        OnlyBy = Preset,
        Releasers = [StaffRole.Management],
    };

    /// <summary>Sessions and matches; meetings are not known. Preparation, breaks and weeks before the limits hold are left out.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures) => plan.Athletes.Looks(athlete =>
        from week in plan.Weeks
        where figures.Preset(Preset, week.Days.First) is not null && !week.IsBreak && !week.IsPreparation
        from look in Looks(plan, athlete, week, figures)
        select look);

    private static IEnumerable<Look> Looks(Plan plan, AthleteDays athlete, PlanWeek week, Figures figures)
    {
        var (weekH, dayH, daysOff) = week.IsTransition ? (UsCollegeOffWeekH, UsCollegeOffDayH, UsCollegeOffDaysOff) : (UsCollegeWeekH, UsCollegeDayH, UsCollegeDaysOff);
        var (place, match) = (Place.Of(week), figures.Number(UsCollegeMatchCountsH));
        var days = week.Days.Days().Select(day => (Day: day, Hours: athlete.On(day).Sum(session => session.Minutes.Value) / 60m + (plan.HasMatchOn(day) ? match : 0))).ToList();
        var (sum, longest) = (Math.Round(days.Sum(day => day.Hours), 1, MidpointRounding.AwayFromZero), days.MaxBy(day => day.Hours));
        var isFound = false;
        // What is laid out alone may pass a limit, whatever else there is.
        if (sum > figures.Number(weekH)) yield return Told("week", sum, weekH, sum);
        if (Math.Round(longest.Hours, 1, MidpointRounding.AwayFromZero) is var most && most > figures.Number(dayH)) yield return Told("day", most, dayH, most, longest.Day);
        if (!figures.IsYes(UsCollegeAfterMatchAllowed) && athlete.Between(week.Days.First, week.Days.Last).FirstOrDefault(session => plan.LastMatch(session) is { KickOff: not null } last && last.Day == session.Day) is { } after)
        {
            isFound = true;
            yield return new Breach(place, "after-match", Severity.Stop, 1, 0) { Numbers = [new NamedSession(after)], Remedy = BetterSession.Away(plan, after) };
        }
        if (!week.IsLaidOut)
        {
            if (!isFound) yield return new TooLittle(place, week.HasOurs ? "missing.practices" : "missing.sessions");
            yield break;
        }
        var free = days.Count(day => day.Hours == 0);
        if (free < figures.Number(daysOff) && week.Days.Length == 7) yield return Told("days-off", free, daysOff, free);
        if (!isFound) yield return new Fine(place);

        Breach Told(string code, decimal value, Figure figure, params ReadOnlySpan<object?> numbers)
        {
            isFound = true;
            return new Breach(place, code, Severity.Stop, value, figures.Number(figure)) { Figure = figure.Name, Numbers = ValueList.Create<object?>([.. numbers, figures.Number(figure)]) };
        }
    }
}
