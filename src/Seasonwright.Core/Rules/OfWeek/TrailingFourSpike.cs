using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Load this week; mean of the 4 weeks of training before (this week left out; weeks without team training are no measure of what a squad is used to).</summary>
internal static class TrailingFourSpike
{
    public static readonly Figure CautionRatio = Figure.Number("caution_ratio", 1.3m, FigureUnit.Count);
    public static readonly Figure WarningRatio = Figure.Number("warning_ratio", 1.5m, FigureUnit.Count);
    public static readonly Figure Weeks = Figure.Number("weeks", 4, FigureUnit.Weeks, least: 1);

    public static Rule Rule { get; } = new("trailing-four-spike")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Contested,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Gabbett2016, Sources.Impellizzeri2020, Sources.Lolli2019],
        Figures = [CautionRatio, WarningRatio, Weeks, Figure.HighestSeverity],
        Rising = [[CautionRatio, WarningRatio]],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var weeks = (int)figures.Number(Weeks);
        foreach (var week in plan.Weeks.Where(week => week.IsTraining && week.Number > weeks))
        {
            var place = Place.Of(week);
            // After an absence the comparison begins anew.
            if (plan.SinceAbsence(week) < weeks) yield return new TooLittle(place, "missing.absence");
            else if (week.Total is not { } total || plan.TrainedBefore(week, weeks).ToList() is var before && before.Count < weeks || TrailingFour.Ratio(total, [.. before.Select(other => other.Total)]) is not { } exact) yield return new TooLittle(place, "missing.weeks");
            else yield return Judge(plan, week, total, exact, figures);
        }
    }

    private static Look Judge(Plan plan, PlanWeek week, decimal total, decimal exact, Figures figures)
    {
        var (ratio, usual) = (exact.AsShown(), figures.Number(CautionRatio));
        if (ratio <= usual) return new Fine(Place.Of(week));
        // A week of nothing is 0 times any mean and has gone.
        var mean = total / exact;
        var isHard = ratio > figures.Number(WarningRatio);
        var limit = isHard ? WarningRatio : CautionRatio;
        return new Breach(Place.Of(week), "spike", isHard ? Severity.Warning : Severity.Caution, ratio, figures.Number(limit))
        {
            Numbers = [ratio, plan.Points(total), plan.Points(mean), usual],
            Figure = limit.Name,
            Beyond = ratio - usual,
            IsForced = week.Load.Match.Au > usual * mean,
            Remedy = week.Load.Match.Au > usual * mean ? [] : [new SetWeekLoad(week.Id, week.Id, new Load((int)(usual * mean)))],
        };
    }
}
