using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfAthlete;

/// <summary>Planned one-repetition test; training age; age. Who signed off whose technique, and who supervises, is recorded nowhere yet.</summary>
internal static class NoviceMaxTest
{
    public static readonly Figure MinYears = Figure.Number("min_years", 0.5m, FigureUnit.Count);
    public static readonly Figure YouthAge = Figure.Number("youth_age", 16, FigureUnit.Count);
    public static readonly Figure Ratio = Figure.Number("ratio", 5, FigureUnit.Count);
    public static readonly Figure EstimateReps = Figure.Numbers("estimate_reps", FigureUnit.Count, 3, 10);

    private const decimal DaysInYear = 365.25m;

    /// <summary>Per cent of the most that can be lifted once.</summary>
    private const int Most = 100;

    public static Rule Rule { get; } = new("novice-max-test")
    {
        Scope = RuleScope.Athlete,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.Faigenbaum2009, Sources.Faigenbaum2003, Sources.Nsca2017],
        Figures = [MinYears, YouthAge, Ratio, EstimateReps],
        Needs = Needs.Results,
        LooksAtPlayers = Looks,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from day in squad.Days
        from player in squad.Players
        let test = TestOn(squad, squad.DayOf(player, day))
        where test is not null
        select Look(squad, player, day, test.Value, figures);

    private static Look Look(SquadPlan squad, Player player, DateOnly day, bool isMaximal, Figures figures)
    {
        var place = Place.Of(player, squad.Plan.WeekOf(day)!);
        if (!isMaximal) return new TooLittle(place, "missing.test");
        var (age, years, youth, least) = (player.Athlete.AgeOn(day), YearsOn(player.Athlete.Training, day), figures.Number(YouthAge), figures.Number(MinYears));
        var reps = figures.Numbers(EstimateReps);
        return age < youth ? new Breach(place, "young", Severity.Warning, age.Value, youth) { Figure = YouthAge.Name, Numbers = [player.Athlete.Name, age, day, reps[0], reps[1]] }
            : years < least ? new Breach(place, "novice", Severity.Warning, years.Value, least) { Figure = MinYears.Name, Numbers = [player.Athlete.Name, least, day, reps[0], reps[1]] }
            : age is null || years is null ? new TooLittle(place, "missing.age")
            : new Fine(place);
    }

    /// <summary>Whether a player's day holds a test of the most that can be lifted once; null where it holds no test of strength.</summary>
    /// <returns>False where it may be one, and nobody said.</returns>
    private static bool? TestOn(SquadPlan squad, PlayerDay day)
    {
        if (!day.IsThere) return null;
        var sessions = day.Fits.Where(fit => fit.Session.Kind == SessionKind.Test && fit.Kind is not (FitKind.NotAtAll or FitKind.Replaced)).Select(fit => fit.Session).ToList();
        var words = sessions.Select(session => session.Name).OfType<string>().Concat(squad.Plan.Season.TestDays.Where(test => test.Day == day.Day && test.For is null).Select(test => test.Battery)).ToList();
        return words.Exists(TestWords.NameMaximalLifts) || sessions.Exists(session => session.Doses?.Any(dose => dose.Top?.Value >= Most) == true) ? true
            : words.Exists(TestWords.NameStrength) || sessions.Exists(session => SessionContent.Gives(session, squad.Plan.Setup, QualityKind.MaximumStrength)) ? false
            : null;
    }

    /// <summary>Years of strength training that somebody has at least: those told in whole ones, and what has passed since.</summary>
    private static decimal? YearsOn(TrainingAge? training, DateOnly day) =>
        training is { } told ? Math.Max(0, told.Years + (day.DayNumber - told.On.DayNumber) / DaysInYear) : null;
}
