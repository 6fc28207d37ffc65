using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Planned load this week and last comparable week.</summary>
internal static class WeeklyRamp
{
    /// <summary>The first two weeks back follow the ceilings of <see cref="OfAthlete.ReturnAfterBreakVolume"/> instead.</summary>
    private const int WeeksAfterAbsence = 2;

    public static readonly Figure CautionUp = Figure.Number("caution_up", 0.15m, FigureUnit.Share);
    public static readonly Figure WarningUp = Figure.Number("warning_up", 0.2m, FigureUnit.Share);
    public static readonly Figure YouthCautionUp = Figure.Number("youth_caution_up", 0.1m, FigureUnit.Share);
    public static readonly Figure MinRefShare = Figure.Number("min_ref_share", 0.4m, FigureUnit.Share);
    public static readonly Figure CautionPoints = Figure.Number("caution_points", 10, FigureUnit.Points);

    public static Rule Rule { get; } = new("weekly-ramp")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Contested,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Soligard2016, Sources.Gabbett2016, Sources.Fredette2022, Sources.Nielsen2014],
        Figures = [CautionUp, WarningUp, YouthCautionUp, MinRefShare, CautionPoints, Figure.HighestSeverity],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var totals = plan.Weeks.Select(week => week.Total).OfType<decimal>().Order().ToList();
        PlanWeek? reference = null;
        foreach (var week in plan.Weeks)
        {
            if (week.IsTraining && plan.SinceAbsence(week) >= WeeksAfterAbsence) yield return reference is null ? new TooLittle(Place.Of(week), "missing.before") : Judge(plan, week, reference, totals, figures);
            if (week.IsTraining && !week.IsEasy && week.Kind != WeekKind.Reduced && week.Total is not null) reference = week;
        }
    }

    private static Look Judge(Plan plan, PlanWeek week, PlanWeek reference, List<decimal> totals, Figures figures)
    {
        var before = reference.Total!.Value;
        if (week.Total is not { } total || before <= 0) return new TooLittle(Place.Of(week), "missing.load");
        // Against a very light week every week is a rise.
        if (before < figures.Number(MinRefShare) * totals[totals.Count / 2]) return new TooLittle(Place.Of(week), "missing.before");
        var most = Math.Min((1 + figures.Number(CautionUp)) * before, before + figures.Number(CautionPoints) * plan.Point);
        var (rise, points) = ((total / before - 1).AsShown(), plan.Points(total) - plan.Points(before));
        var isSharp = rise > figures.Number(CautionUp);
        if (!isSharp && points <= figures.Number(CautionPoints)) return new Fine(Place.Of(week));
        var isHard = rise > figures.Number(WarningUp);
        var (value, limit) = (isHard, isSharp) switch
        {
            (true, _) => (rise, WarningUp),
            (_, true) => (rise, CautionUp),
            _ => (points, CautionPoints),
        };
        return new Breach(Place.Of(week), "rise", isHard ? Severity.Warning : Severity.Caution, value, figures.Number(limit))
        {
            Numbers = [plan.Points(total), plan.Points(before), reference.Number, rise.AsPercent(), figures.Number(CautionPoints), figures.Number(CautionUp).AsPercent()],
            Figure = limit.Name,
            // In points, whichever of the two limits it is told by.
            Beyond = Math.Round((total - most) / plan.Point, 1),
            IsForced = week.Load.Match.Au > most,
            Remedy = week.Load.Match.Au > most ? [] : [new SetWeekLoad(week.Id, week.Id, new Load((int)most))],
        };
    }
}
