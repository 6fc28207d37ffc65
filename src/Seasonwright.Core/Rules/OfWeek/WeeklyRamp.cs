using Seasonwright.Core.Edits;
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
        Rising = [[CautionUp, WarningUp]],
        Needs = Needs.Squad,
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var totals = plan.Weeks.Select(week => week.Total).OfType<decimal>().Order().ToList();
        var leastBefore = totals.Count == 0 ? 0 : figures.Number(MinRefShare) * totals[totals.Count / 2];
        var lowered = Lowered(plan, figures, leastBefore);
        PlanWeek? reference = null;
        foreach (var week in plan.Weeks)
        {
            if (IsJudged(plan, week)) yield return reference is null ? new TooLittle(Place.Of(week), "missing.before") : Judge(plan, week, reference, leastBefore, lowered, figures);
            if (IsReference(week)) reference = week;
        }
    }

    private static bool IsJudged(Plan plan, PlanWeek week) => week.IsTraining && plan.SinceAbsence(week) >= WeeksAfterAbsence;

    /// <summary>A short first week is no measure for a whole one.</summary>
    private static bool IsReference(PlanWeek week) => week.IsTraining && week.Days.Length == 7 && !week.IsEasy && week.Kind != WeekKind.Reduced && week.Total is not null;

    private static Look Judge(Plan plan, PlanWeek week, PlanWeek reference, decimal leastBefore, decimal?[] lowered, Figures figures)
    {
        var before = reference.Total!.Value;
        if (week.Total is not { } total || before <= 0) return new TooLittle(Place.Of(week), "missing.load");
        // Against a very light week every week is a rise.
        if (before < leastBefore) return new TooLittle(Place.Of(week), "missing.before");
        if (!Rises(plan, total, before, figures)) return new Fine(Place.Of(week));
        var most = Most(plan, before, figures);
        var (rise, points) = ((total / before - 1).AsShown(), plan.Points(total) - plan.Points(before));
        var (value, limit) = rise > figures.Number(WarningUp) ? (rise, WarningUp) : rise > figures.Number(CautionUp) ? (rise, CautionUp) : (points, CautionPoints);
        return new Breach(Place.Of(week), "rise", limit == WarningUp ? Severity.Warning : Severity.Caution, value, figures.Number(limit))
        {
            Numbers = [plan.Points(total), plan.Points(before), reference.Number, rise.AsPercent(), figures.Number(CautionPoints), figures.Number(CautionUp).AsPercent()],
            Figure = limit.Name,
            // In points, whichever of the two limits it is told by.
            Beyond = Math.Max(0, Math.Round((total - most) / plan.Point, 1)),
            IsForced = week.Load.Match.Au > most,
            Remedy = week.Load.Match.Au > most ? [] : [.. Remedy(plan, week, lowered)],
        };
    }

    private static bool Rises(Plan plan, decimal total, decimal before, Figures figures) =>
        (total / before - 1).AsShown() > figures.Number(CautionUp) || plan.Points(total) - plan.Points(before) > figures.Number(CautionPoints);

    private static decimal Most(Plan plan, decimal before, Figures figures) => Math.Min((1 + figures.Number(CautionUp)) * before, before + figures.Number(CautionPoints) * plan.Point);

    /// <summary>
    /// The load of each week after every rise is cut to its limit, from the first on: a week that is lowered lets the next rise, so
    /// that one is held against what is left of it.
    /// </summary>
    private static decimal?[] Lowered(Plan plan, Figures figures, decimal leastBefore)
    {
        var lowered = plan.Weeks.Select(week => week.Total).ToArray();
        decimal before = 0;
        foreach (var week in plan.Weeks)
        {
            if (IsJudged(plan, week) && week.Total is { } total && before > 0 && before >= leastBefore && Rises(plan, total, before, figures) && Most(plan, before, figures) is var most && week.Load.Match.Au <= most)
                lowered[week.Number - 1] = Math.Floor(most);
            if (IsReference(week)) before = lowered[week.Number - 1]!.Value;
        }
        return lowered;
    }

    /// <summary>This week's cut and those that follow from it, up to the first week that may stay.</summary>
    private static IEnumerable<SeasonEdit> Remedy(Plan plan, PlanWeek first, decimal?[] lowered)
    {
        foreach (var week in plan.Weeks.Skip(first.Number - 1))
        {
            if (lowered[week.Number - 1] is { } load && load < week.Total) yield return new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(load));
            else if (IsReference(week)) yield break;
        }
    }
}
