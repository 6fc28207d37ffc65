using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Availability as reported, and the sessions that are a player's. What a restriction changes is in force by itself (<see cref="SessionFit"/>); the rule speaks where that leaves something unsaid.</summary>
internal static class RestrictionOverridesPlan
{
    public static readonly Figure ExpireNeedsReview = Figure.YesNo("expire_needs_review", true);
    public static readonly Figure ReviewDays = Figure.Number("review_days", 7, FigureUnit.Days);

    public static Rule Rule { get; } = new("restriction-overrides-plan")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Stop,
        Evidence = Evidence.Strong,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.OlympicMedicalCode2016, Sources.BritishOlympicAssociation2000],
        Figures = [ExpireNeedsReview, ReviewDays],
        LooksAtPlayers = Looks,
        IsFixed = true,
        Releasers = [StaffRole.Doctor, StaffRole.Physiotherapist],
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) => squad.Players.SelectMany(player => OfPlayer(squad, player, figures)).Concat(WithoutAnybody(squad));

    private static IEnumerable<Look> OfPlayer(SquadPlan squad, Player player, Figures figures)
    {
        foreach (var day in squad.Days.Select(day => squad.DayOf(player, day)).Where(day => !day.IsAway && day.Standing.Availability.State != AvailabilityState.Full))
        {
            var place = Place.Of(player, squad.Plan.WeekOf(day.Day)!);
            var isFound = false;
            if (day.Fits.FirstOrDefault(fit => fit.Kind == FitKind.ToBeAsked) is { } first)
            {
                isFound = true;
                yield return new Breach(place, "ask", Severity.Stop, day.Fits.Count(fit => fit.Kind == FitKind.ToBeAsked), 0) { Numbers = [player.Athlete.Name, new NamedSession(first.Session)] };
            }
            if (figures.IsYes(ExpireNeedsReview) && day.Standing is { IsReviewOverdue: true, ReviewOn: { } review } && Past(review, day.Day) is var past && (past - 1) % Math.Max(1, (int)figures.Number(ReviewDays)) == 0)
            {
                isFound = true;
                yield return new Breach(place, "review", Severity.Caution, past, 0) { Numbers = [player.Athlete.Name, review, day.Day] };
            }
            if (!isFound) yield return new Fine(place);
        }
    }

    /// <summary>Sessions of groups in which nobody who is there can do anything of them. Who is away is not there; where nobody is, nothing is left unsaid.</summary>
    private static IEnumerable<Look> WithoutAnybody(SquadPlan squad)
    {
        foreach (var session in squad.Plan.Sessions.Where(session => session.Groups is not null && squad.Days.Contains(session.Day)))
        {
            var fits = squad.Players.SelectMany(player => squad.DayOf(player, session.Day).Fits).Where(fit => fit.Session.Id == session.Id).ToList();
            if (fits.Count == 0) continue;
            var place = Place.Of(squad.Plan, session);
            yield return fits.TrueForAll(fit => fit.Kind == FitKind.NotAtAll)
                ? new Breach(place, "nobody", Severity.Stop, fits.Count, 0) { Numbers = [new NamedSession(session), squad.Plan.NamesOf(session.Groups)] }
                : new Fine(place);
        }
    }

    private static int Past(DateOnly review, DateOnly day) => day.DayNumber - review.DayNumber;
}
