using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Athlete age; organised hours per week (all sports if known).</summary>
internal static class YouthWeeklyHours
{
    public static readonly Figure YouthAge = Figure.Number("youth_age", 18, FigureUnit.Count);
    public static readonly Figure SoftCapH = Figure.Number("soft_cap_h", 16, FigureUnit.Hours);
    public static readonly Figure HoursPerYearOfAge = Figure.Number("hours_per_year_of_age", 1, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-weekly-hours")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Nata2019, Sources.DiFiori2014, Sources.Aap2024],
        Figures = [YouthAge, SoftCapH, HoursPerYearOfAge],
        LooksAtPlayers = Looks,
        IsForYouth = true,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from week in squad.Weeks
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
        var days = squad.DaysOf(player, week).Select(day => MinutesOn(squad, player, day)).ToList();
        var hours = Math.Round(days.Sum(day => day.Known) / 60m, 1, MidpointRounding.AwayFromZero);
        // The hours that are known may pass a limit, whatever comes on top of them.
        if (Judge(age, hours, figures) is { } severity)
        {
            var (code, figure, limit) = severity == Severity.Warning ? ("age", HoursPerYearOfAge, age * figures.Number(HoursPerYearOfAge)) : ("cap", SoftCapH, figures.Number(SoftCapH));
            return new Breach(place, code, severity, hours, limit) { Figure = figure.Name, Numbers = [player.Athlete.Name, age, hours, limit] };
        }
        return !week.IsLaidOut ? new TooLittle(place, week.HasOurs ? "missing.practices" : "missing.sessions")
            : days.TrueForAll(day => day.IsAll) ? new Fine(place)
            : new TooLittle(place, "missing.elsewhere");
    }

    /// <summary>Minutes of sessions and matches, and of what is told from elsewhere.</summary>
    private static (int Known, bool IsAll) MinutesOn(SquadPlan squad, Player player, PlayerDay day)
    {
        if (day.Where == Whereabouts.Absent) return OutsideSport.MinutesOn(player.Absences, day.Day) is { } told ? (told, true) : (0, false);
        if (day.IsAway) return (0, false);
        var matches = day.IsThere ? squad.Plan.Matches.Count(match => match.Day == day.Day) : 0;
        return (day.Fits.Sum(fit => fit.Minutes?.Value ?? 0) + matches * squad.Plan.Setup.MatchLoad.Minutes.Value, day.Fits.All(fit => fit.Minutes is not null));
    }

    /// <param name="age">Whole years.</param>
    /// <param name="hours">Organised ones in the week, all sports that are known.</param>
    public static Severity? Judge(int age, decimal hours, Figures figures) =>
        age >= figures.Number(YouthAge) ? null
        : hours > age * figures.Number(HoursPerYearOfAge) ? Severity.Warning
        : hours > figures.Number(SoftCapH) ? Severity.Caution
        : null;
}
