using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Official match dates; competition phase dates.</summary>
internal static class MidseasonBreakMissing
{
    public static readonly Figure MinPhaseWeeks = Figure.Number("min_phase_weeks", 26, FigureUnit.Weeks);
    public static readonly Figure BreakDays = Figure.Number("break_days", 7, FigureUnit.Days);

    public static Rule Rule { get; } = new("midseason-break-missing")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Caution,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Fifpro2025],
        Figures = [MinPhaseWeeks, BreakDays],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        if (plan.Official.FirstOrDefault() is not { } first || plan.Official.LastOrDefault() is not { } last) yield break;
        var painted = plan.Weeks.Where(week => week.IsCompetition).ToList();
        // Without phases the competition runs from the first official match to the last.
        var from = painted.Count > 0 ? painted[0].Days.First : first.Day!.Value;
        var to = painted.Count > 0 ? painted[^1].Days.Last : last.Day!.Value;
        if (plan.WeekOf(from) is not { } firstWeek || plan.WeekOf(to) is not { } lastWeek) yield break;
        var place = new Place("season", firstWeek.Number, lastWeek.Number);
        var weeks = WholeWeeks(from, to);
        var free = LongestGap(plan, from, to, IsOff);
        if (weeks <= figures.Number(MinPhaseWeeks) || free >= figures.Number(BreakDays)) yield return new Fine(place);
        else
        {
            yield return new Breach(place, "missing", Severity.Caution, free, figures.Number(BreakDays))
            {
                Numbers = [weeks, free, figures.Number(BreakDays)],
                Figure = BreakDays.Name,
                // Whatever is painted: the matches themselves last that long and leave no room.
                IsForced = WholeWeeks(first.Day!.Value, last.Day!.Value) > figures.Number(MinPhaseWeeks) && LongestGap(plan, first.Day.Value, last.Day.Value, (_, _) => true) < figures.Number(BreakDays),
            };
        }
    }

    private static int WholeWeeks(DateOnly from, DateOnly to) => (to.DayNumber - from.DayNumber + 1) / 7;

    /// <summary>Days of the longest run without match whose days are all off.</summary>
    private static int LongestGap(Plan plan, DateOnly from, DateOnly to, Func<Plan, DateOnly, bool> isOff)
    {
        var matchDays = plan.Matches.Select(match => match.Day!.Value).ToHashSet();
        var (run, longest) = (0, 0);
        for (var day = from; day <= to; day = day.AddDays(1))
        {
            run = matchDays.Contains(day) || !isOff(plan, day) ? 0 : run + 1;
            longest = Math.Max(longest, run);
        }
        return longest;
    }

    /// <summary>A day of a break, of a week without practices, or of an event that leaves no training for anyone.</summary>
    private static bool IsOff(Plan plan, DateOnly day) =>
        plan.WeekOf(day) is { } week && (!week.IsTraining || plan.Season.PracticesOf(week.Id) is { Count: 0 })
        || plan.Events.Any(item => item.IsClosing && item.Days.Contains(day));
}
