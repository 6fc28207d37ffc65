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
        var weeks = (to.DayNumber - from.DayNumber + 1) / 7;
        var (free, open) = LongestGaps(plan, from, to);
        if (weeks <= figures.Number(MinPhaseWeeks) || free >= figures.Number(BreakDays)) yield return new Fine(place);
        else
        {
            yield return new Breach(place, "missing", Severity.Caution, free, figures.Number(BreakDays))
            {
                Numbers = [weeks, free, figures.Number(BreakDays)],
                Figure = BreakDays.Name,
                IsForced = open < figures.Number(BreakDays),
            };
        }
    }

    /// <summary>Longest runs of days without match and team training, and of days without match whatever is trained.</summary>
    private static (int Free, int Open) LongestGaps(Plan plan, DateOnly from, DateOnly to)
    {
        var matchDays = plan.Matches.Select(match => match.Day!.Value).ToHashSet();
        var (free, open, longestFree, longestOpen) = (0, 0, 0, 0);
        for (var day = from; day <= to; day = day.AddDays(1))
        {
            open = matchDays.Contains(day) ? 0 : open + 1;
            free = open > 0 && IsOff(plan, day) ? free + 1 : 0;
            (longestFree, longestOpen) = (Math.Max(longestFree, free), Math.Max(longestOpen, open));
        }
        return (longestFree, longestOpen);
    }

    /// <summary>A day of a break, of a week without practices, or of an event that leaves no training for anyone.</summary>
    private static bool IsOff(Plan plan, DateOnly day) =>
        plan.WeekOf(day) is { } week && (!week.IsTraining || plan.Season.PracticesOf(week.Id) is { Count: 0 })
        || plan.Events.Any(item => item is { Training.Value: 0, For: null, Part: null } && item.Days.Contains(day));
}
