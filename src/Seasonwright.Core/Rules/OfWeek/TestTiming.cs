using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Test dates and kinds (fatiguing or not); matches; week kinds; load.</summary>
internal static class TestTiming
{
    /// <summary>From this building week in a row on a squad is tired. From the rulebook's condition; expert opinion.</summary>
    private const int LateBuildingWeek = 3;

    public static readonly Figure BeforeMatchH = Figure.Number("before_match_h", 72, FigureUnit.Hours);
    public static readonly Figure AfterMatchH = Figure.Number("after_match_h", 48, FigureUnit.Hours);
    public static readonly Figure DecisiveDays = Figure.Number("decisive_days", 10, FigureUnit.Days);
    public static readonly Figure HeavyRatio = Figure.Number("heavy_ratio", 1.1m, FigureUnit.Count);
    public static readonly Figure NonFatiguingExempt = Figure.YesNo("non_fatiguing_exempt", true);

    public static Rule Rule { get; } = new("test-timing")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Thomas2018, Sources.Silva2018],
        Figures = [BeforeMatchH, AfterMatchH, DecisiveDays, HeavyRatio, NonFatiguingExempt],
        Needs = Needs.Results,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures) =>
        from test in plan.Season.TestDays
        let week = plan.WeekOf(test.Day)
        where week is not null && !(figures.IsYes(NonFatiguingExempt) && TestWords.TireNobody(test.Battery))
        select Judge(plan, test, week, figures);

    private static Look Judge(Plan plan, TestDay test, PlanWeek week, Figures figures)
    {
        var place = new Place($"test/{test.Id}", week.Number, week.Number);
        var found = Timing(plan, test.Day, figures) ?? Heaviness(plan, week, figures);
        if (found is not var (code, severity, limit, value, other)) return new Fine(place);
        return new Breach(place, code, severity, value, figures.Number(limit))
        {
            Numbers = [test.Day, test.Battery, value, figures.Number(limit), other],
            // No figure says from which building week on a squad is tired.
            Figure = code == "late" ? "" : limit.Name,
            Remedy = BetterTestDay.For(plan, test),
        };
    }

    /// <summary>Whole days stand for their hours: two days after a match are 48, three days before one are 72.</summary>
    private static (string Code, Severity Severity, Figure Limit, decimal Value, object? Other)? Timing(Plan plan, DateOnly day, Figures figures)
    {
        var next = plan.Official.FirstOrDefault(match => match.Day >= day);
        var last = plan.Official.LastOrDefault(match => match.Day < day);
        if (next is not null && Hours(day, next.Day!.Value) is var before && before < figures.Number(BeforeMatchH)) return ("before", Severity.Warning, BeforeMatchH, before, next.Day);
        if (last is not null && Hours(last.Day!.Value, day) is var after && after < figures.Number(AfterMatchH)) return ("after", Severity.Warning, AfterMatchH, after, last.Day);
        var key = plan.Official.FirstOrDefault(match => match.Importance == Importance.Key && match.Day >= day);
        return key is not null && key.Day!.Value.DayNumber - day.DayNumber is var days && days <= figures.Number(DecisiveDays) ? ("decisive", Severity.Warning, DecisiveDays, days, key.Day) : null;
    }

    private static (string Code, Severity Severity, Figure Limit, decimal Value, object? Other)? Heaviness(Plan plan, PlanWeek week, Figures figures)
    {
        if (OfSeason.BuildingRunTooLong.CountTo(plan, week) is var building && building >= LateBuildingWeek) return ("late", Severity.Caution, HeavyRatio, building, null);
        if (plan.SinceAbsence(week) < 4 || week.Number <= 4 || week.Total is not { } total) return null;
        var ratio = TrailingFour.Ratio(total, [.. plan.TrainedBefore(week, 4).Select(other => other.Total)])?.AsShown();
        return ratio > figures.Number(HeavyRatio) ? ("heavy", Severity.Caution, HeavyRatio, ratio.Value, null) : null;
    }

    /// <summary>Whether the rule, where the team has it on, is against a test that tires on this day.</summary>
    public static bool IsAgainst(Plan plan, DateOnly day, PlanWeek week) =>
        new Figures(Rule.Id, plan.Setup) is var figures && Rule.IsOn(plan.Setup) && (Timing(plan, day, figures) ?? Heaviness(plan, week, figures)) is not null;

    private static decimal Hours(DateOnly from, DateOnly to) => 24 * (to.DayNumber - from.DayNumber);
}
