using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Daily check-in items (1-5 or 1-10) per athlete; own rolling baseline.</summary>
internal static class WellnessDrop
{
    public static readonly Figure BaselineDays = Figure.Number("baseline_days", 28, FigureUnit.Days);
    public static readonly Figure MinEntries = Figure.Number("min_entries", 14, FigureUnit.Count);
    public static readonly Figure ZCaution = Figure.Number("z_caution", -1, FigureUnit.Count, least: -10);
    public static readonly Figure ZWarning = Figure.Number("z_warning", -2, FigureUnit.Count, least: -10);
    public static readonly Figure RunDays = Figure.Number("run_days", 3, FigureUnit.Days);
    public static readonly Figure MinSd = Figure.Number("min_sd", 0.3m, FigureUnit.Count);

    public static Rule Rule { get; } = new("wellness-drop")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Saw2016, Sources.Thornton2019],
        Figures = [BaselineDays, MinEntries, ZCaution, ZWarning, RunDays, MinSd],
        Needs = Needs.CheckIns,
    };

    /// <summary>One item of an athlete's check-in against the athlete's own entries before, higher being better.</summary>
    /// <param name="mean">Of the baseline, today left out.</param>
    /// <param name="deviation">Its standard deviation, n - 1.</param>
    /// <param name="entries">How many it rests on.</param>
    /// <param name="days">Today's value last, the days in a row before it first.</param>
    public static Verdict Judge(decimal mean, decimal deviation, int entries, IReadOnlyList<decimal> days, Figures figures)
    {
        if (days.Count == 0 || entries < figures.Number(MinEntries) || deviation < figures.Number(MinSd)) return Verdict.TooLittle;
        var caution = mean + figures.Number(ZCaution) * deviation;
        if (days[^1] > caution) return new(null);
        var run = (int)figures.Number(RunDays);
        var isRun = days.Count >= run && days.TakeLast(run).All(day => day <= caution);
        return new(isRun || days[^1] <= mean + figures.Number(ZWarning) * deviation ? Severity.Warning : Severity.Caution);
    }
}
