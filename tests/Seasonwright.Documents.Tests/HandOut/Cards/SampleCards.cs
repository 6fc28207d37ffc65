using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Cards;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut.Cards;

/// <summary>A session in the gym and invented players who do it.</summary>
internal static class SampleCards
{
    public static readonly DateOnly Day = new(2027, 7, 6);

    private static readonly WorkoutId Legs = new("legs");

    public static Setup Setup(MassUnit unit = MassUnit.Kilogram, bool comma = false) => new SetupEdit[] { new SetGym(Gym.Usual(unit)), new SetLocale(new LocaleSettings(DecimalComma: comma, MassUnit: unit)) }
        .Aggregate(Core.Setups.Setup.Empty(new("team")), (setup, edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step));

    public static Player Player(string id, string name, string? number = null, decimal squat = 100, MassUnit unit = MassUnit.Kilogram) => new(
        new Athlete(new(id), name, "", number, [], null, null), [new(new(id), new("team"), Day.AddYears(-1), null, LeadingDays.None)], [], [],
        [new(Guid.Empty, new(id), Day.AddDays(-7), new(70, BodyMassUnit.Kilogram), default)],
        [new(Guid.Empty, new(id), new("back-squat"), Day.AddDays(-7), new Weight(squat, unit), 1, null, default)], [], []);

    public static Player Reported(this Player player, Availability availability) => player with
    {
        Reports = [new AvailabilityReport(Guid.Empty, player.Id, availability, Day.AddDays(-1), null, new(ReporterRole.Doctor, true, "Dr Wexcombe"), ReportedHow.Phone, new("coach"), default, true)],
    };

    /// <summary>A warm-up, one exercise by itself with tempo and a note, two in turn.</summary>
    public static SquadCards Of(IReadOnlyCollection<Player> players, Setup? setup = null, Workout? workout = null)
    {
        var book = new SeasonBook(2);
        book.Write(new SetWorkout(workout ?? new Workout(Legs, "Legs heavy",
        [
            new(PartKind.WarmUp, [Item("goblet-squat", 2, 8, Effort.Free)], 30),
            new(PartKind.Straight, [Item("back-squat", 4, 5, Effort.OfMax(82.5m), new Tempo(3, 1, null, 0), "Chest up")], 150),
            new(PartKind.Superset, [Item("nordic-lower", 2, 4, Effort.Free), Item("leg-press", 3, 8, Effort.Reserve(2))], 90),
        ], Progression.None)));
        var session = new Session(new("gym"), Day, DaySlot.Morning, SessionKind.LowerStrength, new Minutes(60), new Rpe(7m), Start: new(8, 30), Workout: (workout?.Id) ?? Legs);
        book.Write(new SetSession(session));
        return SquadCards.Of(new SharedSeason(book.Season, setup ?? Setup(), Edition.Draft(Day)), session, players);
    }

    public static WorkoutItem Item(string exercise, int sets, int amount, Effort effort, Tempo? tempo = null, string? note = null) => new(new(exercise), new(exercise), new(sets, amount, WorkUnit.Repetitions, effort, tempo), note);
}
