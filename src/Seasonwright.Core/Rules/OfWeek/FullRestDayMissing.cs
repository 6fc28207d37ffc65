using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>All sessions and matches per athlete, rolling 7 days.</summary>
internal static class FullRestDayMissing
{
    public static readonly Figure WindowDays = Figure.Number("window_days", 7, FigureUnit.Days);
    public static readonly Figure MinRestDays = Figure.Number("min_rest_days", 1, FigureUnit.Days);
    public static readonly Figure TravelCountsH = Figure.Number("travel_counts_h", 4, FigureUnit.Hours);

    public static Rule Rule { get; } = new("full-rest-day-missing")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Fifa2025, Sources.NcaaHours, Sources.Nata2019],
        Figures = [WindowDays, MinRestDays, TravelCountsH],
        Needs = Needs.Sessions,
    };

    /// <summary>Days of one athlete in a row: whether each is free of sessions, matches, tests and long travel. Fewer than the window has cannot be judged.</summary>
    public static Verdict Judge(IReadOnlyList<bool> isFree, Figures figures)
    {
        var window = (int)figures.Number(WindowDays);
        if (isFree.Count < window) return Verdict.TooLittle;
        return new(Enumerable.Range(0, isFree.Count - window + 1).Any(first => isFree.Skip(first).Take(window).Count(free => free) < figures.Number(MinRestDays)) ? Severity.Warning : null);
    }
}
