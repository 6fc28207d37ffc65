using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Strength sessions in return weeks 1-2; sets, reps, %1RM per exercise; tests in the first days; punishment tag.</summary>
internal static class ReturnAfterBreakStrength
{
    public static readonly Figure Freq = Figure.Numbers("freq", FigureUnit.Count, 3, 4);
    public static readonly Figure IrvRange = Figure.Numbers("irv_range", FigureUnit.Count, 11, 30);
    public static readonly Figure NoTestDays = Figure.Number("no_test_days", 4, FigureUnit.Days);

    public static Rule Rule { get; } = new("return-after-break-strength")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Caterisano2019, Sources.CollegePolicy, Sources.Ncaa2019],
        Figures = [Freq, IrvRange, NoTestDays],
        Needs = Needs.Sessions,
        Looks = Looks,
    };

    /// <summary>Tests in the first days back. Sessions and their lifting index wait for sessions.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        foreach (var test in plan.Season.TestDays.Where(test => !TestWords.TireNobody(test.Battery)))
        {
            if (plan.WeekOf(test.Day) is not { IsTraining: true } week || FirstDayBack(plan, week) is not { } back) continue;
            var day = test.Day.DayNumber - back.DayNumber + 1;
            // Of the weeks after the first only what is left of the first days in them.
            if (day > figures.Number(NoTestDays) && plan.SinceAbsence(week) > 0) continue;
            var place = new Place($"test/{test.Id}", week.Number, week.Number);
            yield return day > figures.Number(NoTestDays)
                ? new Fine(place)
                : new Breach(place, "test", Severity.Warning, day, figures.Number(NoTestDays))
                {
                    Numbers = [test.Day, test.Battery, day, figures.Number(NoTestDays)],
                    Figure = NoTestDays.Name,
                    Remedy = BetterTestDay.For(plan, test),
                };
        }
    }

    /// <summary>Whether the rule, where the team has it on, is against a test that tires on this day.</summary>
    public static bool IsAgainst(Plan plan, DateOnly day, PlanWeek week) =>
        Rule.IsOn(plan.Setup) && FirstDayBack(plan, week) is { } back && day.DayNumber - back.DayNumber < new Figures(Rule.Id, plan.Setup).Number(NoTestDays);

    /// <summary>Of the last return at or before a week; null where training was kept up. A season's first week may be short, so days are counted and not weeks.</summary>
    private static DateOnly? FirstDayBack(Plan plan, PlanWeek week) =>
        plan.Weeks.Take(week.Number).LastOrDefault(other => IsBack(plan, other) && !(plan.Before(other) is { } before && IsBack(plan, before)))?.Days.First;

    private static bool IsBack(Plan plan, PlanWeek week) => week.IsTraining && plan.SinceAbsence(week) == 0;

    /// <summary>The lifting index of an exercise: sets by repetitions by the share of 1RM, 0 to 1.</summary>
    public static decimal Index(int sets, int reps, decimal share) => sets * reps * share;

    /// <summary>An exercise in the first two weeks back: too much is above the upper end of the range.</summary>
    public static Severity? Judge(int sets, int reps, decimal share, Figures figures) => Index(sets, reps, share) > figures.Numbers(IrvRange)[1] ? Severity.Warning : null;
}
