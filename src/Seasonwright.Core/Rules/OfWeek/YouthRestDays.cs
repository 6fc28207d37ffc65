using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Athlete age; free days per week.</summary>
internal static class YouthRestDays
{
    public static readonly Figure YouthAge = Figure.Number("youth_age", 18, FigureUnit.Count);
    public static readonly Figure Target = Figure.Number("target", 2, FigureUnit.Count);
    public static readonly Figure Minimum = Figure.Number("minimum", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-rest-days")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.Confirmed,
        Sources = [Sources.Nata2019, Sources.Aap2000],
        Figures = [YouthAge, Target, Minimum],
        LooksAtPlayers = Looks,
        IsForYouth = true,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from week in squad.Weeks
        where week.Days.Length == 7
        from player in squad.Players
        let look = Look(squad, player, week, figures)
        where look is not null
        select look;

    /// <returns>Null for whoever is not young.</returns>
    private static Look? Look(SquadPlan squad, Player player, PlanWeek week, Figures figures)
    {
        var place = Place.Of(player, week);
        if (player.Athlete.AgeOn(week.Days.First) is not { } age) return new TooLittle(place, "missing.born");
        if (age >= figures.Number(YouthAge)) return null;
        var days = squad.DaysOf(player, week).Select(day => IsFree(squad, player, week, day)).ToList();
        var (most, least) = (days.Count(free => free != false), days.Count(free => free == true));
        var (target, minimum) = (figures.Number(Target), figures.Number(Minimum));
        // What is not known may be free: so many at most.
        if (most < minimum) return Told("none", Severity.Warning, minimum, Minimum);
        if (most < target) return Told("few", Severity.Caution, target, Target);
        return least >= Math.Max(target, minimum) ? new Fine(place) : new TooLittle(place, week.IsLaidOut ? "missing.elsewhere" : week.HasOurs ? "missing.practices" : "missing.sessions");

        Breach Told(string code, Severity severity, decimal limit, Figure figure) =>
            new(place, code, severity, most, limit) { Figure = figure.Name, Numbers = [player.Athlete.Name, age, most, limit], Beyond = Math.Max(target, minimum) - most };
    }

    /// <summary>Whether a day is free of organised sport; null where that is not known.</summary>
    private static bool? IsFree(SquadPlan squad, Player player, PlanWeek week, PlayerDay day)
    {
        if (day.Where == Whereabouts.Absent) return OutsideSport.IsFreeOn(player.Absences, day.Day);
        if (day.IsAway) return null;
        if (day.Fits.Any(fit => fit.Kind != FitKind.NotAtAll)) return false;
        // Nobody plays, is tested or trains with the team who is out.
        if (!day.IsThere) return true;
        if (squad.Plan.HasMatchOn(day.Day) || squad.Plan.Season.TestDays.Any(test => test.Day == day.Day && test.For is null)) return false;
        return week.IsLaidOut ? true : null;
    }
}
