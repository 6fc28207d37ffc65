using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Days without organised training; new to team; new staff flag; prior exertional heat illness or rhabdomyolysis; baseline = highest normal weekly conditioning volume; planned weekly volume in return week k.</summary>
internal static class ReturnAfterBreakVolume
{
    /// <summary>The word of <see cref="SeasonStart"/> for players who trained on: no absence then.</summary>
    public const string Kept = "kept";

    private const int ReferenceWeeks = 2;

    public static readonly Figure MinAbsenceDays = Figure.Number("min_absence_days", 14, FigureUnit.Days);
    public static readonly Figure CutFull = Figure.Numbers("cut_full", FigureUnit.Share, 0.5m, 0.3m, 0.2m, 0.1m);
    public static readonly Figure CutShort = Figure.Numbers("cut_short", FigureUnit.Share, 0.5m, 0.3m);
    public static readonly Figure WorkRest1 = Figure.Words("work_rest.1", "1:4");
    public static readonly Figure WorkRest2 = Figure.Words("work_rest.2", "1:3");
    public static readonly Figure SeasonStart = Figure.Choice("season_start", "home", "off", "kept");
    public static readonly Figure WeekOffShare = Figure.Number("week_off_share", 0.8m, FigureUnit.Share);
    public static readonly Figure FirstPoints = Figure.Number("first_points", 50, FigureUnit.Points);
    public static readonly Figure SecondPoints = Figure.Number("second_points", 70, FigureUnit.Points);
    public static readonly Figure MatchMarginPoints = Figure.Number("match_margin_points", 14, FigureUnit.Points);
    public static readonly Figure WeekOffMarginPoints = Figure.Number("week_off_margin_points", 24, FigureUnit.Points);

    public static Rule Rule { get; } = new("return-after-break-volume")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Caterisano2019, Sources.ConsensusSummary2019, Sources.Ncaa2019],
        Figures = [MinAbsenceDays, CutFull, CutShort, WorkRest1, WorkRest2, SeasonStart, WeekOffShare, FirstPoints, SecondPoints, MatchMarginPoints, WeekOffMarginPoints],
        Needs = Needs.Sessions | Needs.Squad,
        Releasers = [StaffRole.Doctor],
        Looks = Looks,
    };

    /// <summary>A squad's first weeks back. Single athletes and their own baselines wait for the squad.</summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        var away = 0;
        PlanWeek? lastOff = null;
        foreach (var week in plan.Weeks)
        {
            if (!week.IsTraining)
            {
                away += week.Days.Length;
                lastOff = week;
                continue;
            }
            if (plan.SinceAbsence(week) is var since and < 2 && CeilingAfterAbsence(plan, week, lastOff, since, figures) is { } ceiling) yield return Judge(plan, week, ceiling.Au, figures.Number(MatchMarginPoints), since, ceiling.Figure);
            else if (away > 0 && plan.NormalBefore(week, ReferenceWeeks) is { Count: > 0 } before)
                yield return Judge(plan, week, figures.Number(WeekOffShare) * before.Average(other => other.Total!.Value), figures.Number(WeekOffMarginPoints), 0, WeekOffShare);
            away = 0;
        }
    }

    /// <summary>Of the season's start and of a transition in points of the normal hard week, of a break in season against the weeks before it.</summary>
    private static (decimal Au, Figure Figure)? CeilingAfterAbsence(Plan plan, PlanWeek week, PlanWeek? lastOff, int since, Figures figures)
    {
        var points = since == 0 ? FirstPoints : SecondPoints;
        // A break before anybody trained is the season's start still.
        if (lastOff is null || lastOff.IsTransition || !plan.Weeks.Take(lastOff.Number).Any(other => other.IsTraining)) return (figures.Number(points) * plan.Point, points);
        var before = plan.Weeks.Take(lastOff.Number).Where(other => other.IsNormal && other.Total > 0).TakeLast(ReferenceWeeks).ToList();
        return before.Count > 0 && Ceiling(before.Average(other => other.Total!.Value), since + 1, isFull: false, figures) is { } ceiling ? (ceiling, CutShort) : null;
    }

    private static Look Judge(Plan plan, PlanWeek week, decimal ceiling, decimal margin, int since, Figure figure)
    {
        var place = Place.Of(week);
        if (week.Total is not { } total) return new TooLittle(place, "missing.load");
        // A match in the week is a fact: it and a little beside it are always within.
        if (week.Matches.Length > 0) ceiling = Math.Max(ceiling, week.Load.Match.Au + margin * plan.Point);
        var (points, most) = (plan.Points(total), plan.Points(ceiling));
        if (points <= most) return new Fine(place);
        return new Breach(place, "high", Severity.Warning, points, most)
        {
            Numbers = [points, most, since + 1],
            Figure = figure == CutShort ? "" : figure.Name,
            Remedy = [new SetWeekLoad(week.Id, week.Id, Plan.LoadOf(Math.Floor(ceiling)))],
        };
    }

    /// <summary>One athlete's volume in a week back, in any unit, against the highest normal week before; null for a baseline nobody knows.</summary>
    /// <param name="week">1 is the first week back.</param>
    /// <param name="isFull">Four weeks instead of two: new to the team or the programme, or after heat illness or muscle breakdown.</param>
    public static Verdict Judge(decimal planned, decimal? baseline, int week, bool isFull, bool isAfterHeatIllness, Figures figures)
    {
        if (baseline is not { } usual) return Verdict.TooLittle;
        return new(Ceiling(usual, week, isFull, figures) < planned ? isAfterHeatIllness ? Severity.Stop : Severity.Warning : null);
    }

    /// <summary>The most a week back may hold; null once the schedule is over.</summary>
    public static decimal? Ceiling(decimal baseline, int week, bool isFull, Figures figures)
    {
        var cuts = figures.Numbers(isFull ? CutFull : CutShort);
        return week <= cuts.Count ? (1 - cuts[week - 1]) * baseline : null;
    }
}
