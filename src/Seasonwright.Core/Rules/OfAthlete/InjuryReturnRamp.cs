using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Days out; mean of the four planned weeks before; planned load of each week back. Steps of a clinician's own come before these, and nobody records them here.</summary>
internal static class InjuryReturnRamp
{
    public static readonly Figure AwayDaysMin = Figure.Number("away_days_min", 8, FigureUnit.Days);
    public static readonly Figure Step = Figure.Numbers("step", FigureUnit.Share, 0.5m, 0.7m, 0.85m, 1);
    public static readonly Figure LongAwayDays = Figure.Number("long_away_days", 28, FigureUnit.Days);
    public static readonly Figure LongStep = Figure.Numbers("long_step", FigureUnit.Share, 0.4m, 0.55m, 0.7m, 0.85m, 1);
    public static readonly Figure SprintAfterShare = Figure.Number("sprint_after_share", 0.6m, FigureUnit.Share);

    private const int WeeksBefore = 4;

    public static Rule Rule { get; } = new("injury-return-ramp")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Soligard2016, Sources.Bengtsson2020],
        Figures = [AwayDaysMin, Step, LongAwayDays, LongStep, SprintAfterShare],
        Needs = Needs.Reports,
        LooksAtPlayers = Looks,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from player in squad.Players
        let ways = Comeback.Of(player.Reports).Where(back => back.DaysOut >= figures.Number(AwayDaysMin)).ToList()
        from week in squad.Weeks
            // Of two ways back the later one holds.
        let back = ways.LastOrDefault(back => back.Back <= week.Days.Last)
        where back is not null
        let steps = figures.Numbers(back.DaysOut >= figures.Number(LongAwayDays) ? LongStep : Step)
        let number = NumberOf(squad.Plan, back.Back, week)
        where number >= 1 && number <= steps.Count && squad.DaysOf(player, week).Any(day => day.IsThere)
        from look in Looks(squad, player, week, new Way(back, number, 100 * steps[number - 1]), figures)
        select look;

    /// <summary>Which week of the way back a week is, from 1; 0 before it. A week of fewer than four days of it is not a step of its own.</summary>
    private static int NumberOf(Plan plan, DateOnly back, PlanWeek week) => plan.WeekOf(back) is not { } first || week.Number < first.Number ? 0
        : Math.Max(1, week.Number - first.Number + (first.Days.Last.DayNumber - back.DayNumber + 1 >= Plan.FewestDays ? 1 : 0));

    private static IEnumerable<Look> Looks(SquadPlan squad, Player player, PlanWeek week, Way way, Figures figures)
    {
        var place = Place.Of(player, week);
        if (Before(squad.Plan, way.Back.Out) is not { } before)
        {
            yield return new TooLittle(place, "missing.weeks");
            yield break;
        }
        var (known, isAll) = Planned(squad, player, week);
        var share = Math.Round(100 * known / before, MidpointRounding.AwayFromZero);
        if (share > way.Most) yield return new Breach(place, "over", Severity.Warning, share, way.Most) { Numbers = [player.Athlete.Name, way.Week, way.Back.DaysOut, share, way.Most] };
        else if (!isAll) yield return new TooLittle(place, week.IsLaidOut ? "missing.elsewhere" : week.HasOurs ? "missing.practices" : "missing.sessions");
        else if (share < 100 * figures.Number(SprintAfterShare) && Sprint(squad, player, week) is { } sprint)
        {
            yield return new Breach(place, "sprint", Severity.Caution, share, 100 * figures.Number(SprintAfterShare))
            {
                Figure = SprintAfterShare.Name,
                Numbers = [player.Athlete.Name, new NamedSession(sprint), share, 100 * figures.Number(SprintAfterShare)],
            };
        }
        else yield return new Fine(place);
    }

    /// <summary>Mean AU of the four weeks of training before the one in which somebody went out; null where they are not all known, or hold nothing.</summary>
    private static decimal? Before(Plan plan, DateOnly day)
    {
        if (plan.WeekOf(day) is not { } week) return null;
        var loads = plan.TrainedBefore(week, WeeksBefore).Select(other => other.Total).OfType<decimal>().ToList();
        return loads.Count == WeeksBefore && loads.Sum() > 0 ? loads.Average() : null;
    }

    /// <summary>AU planned for a player in a week, at least, and whether that is all of it. A week that is not laid out is what it is aimed at for whoever is full on all of its days.</summary>
    private static (decimal Known, bool IsAll) Planned(SquadPlan squad, Player player, PlanWeek week)
    {
        var days = squad.DaysOf(player, week).ToList();
        var isAll = days.TrueForAll(day => day.Total is not null);
        return !isAll && week.Total is { } total && !week.IsLaidOut && days.TrueForAll(day => !day.IsAway && day.Standing.Availability.State == AvailabilityState.Full)
            ? (total, true)
            : (days.Sum(day => day.Total?.Au ?? 0), isAll);
    }

    /// <summary>The first session of sprints that is left to the player.</summary>
    private static Session? Sprint(SquadPlan squad, Player player, PlanWeek week) => squad.DaysOf(player, week).SelectMany(day => day.Fits)
        .FirstOrDefault(fit => fit.Kind is FitKind.AsPlanned or FitKind.Modified && !fit.Without.Contains(RestrictionTag.NoSprint) && SessionContent.IsSprint(fit.Session, squad.Plan.Setup))?.Session;

    /// <param name="Week">Of the way back, 1 and more.</param>
    /// <param name="Most">Per cent of the weeks before.</param>
    private readonly record struct Way(Comeback Back, int Week, decimal Most);
}
