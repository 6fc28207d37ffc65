using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Home;
using Seasonwright.Documents.Tests.HandOut.Cards;
using Seasonwright.Documents.Tests.Year;

namespace Seasonwright.Documents.Tests.HandOut.Home;

/// <summary>Weeks at home and invented players who train there.</summary>
internal static class SampleHome
{
    public static readonly DateOnly First = SampleCards.Day.AddDays(6);

    private static readonly Workout AtHome = new(new("home"), "Whole body",
    [
        new(PartKind.WarmUp, [SampleCards.Item("hip-hinge", 2, 8, Effort.Free)], 30),
        new(PartKind.Straight, [SampleCards.Item("goblet-squat", 3, 8, Effort.Reserve(3), new Tempo(2, 0, null, 0), "Slowly down")], 90),
        new(PartKind.Superset, [SampleCards.Item("press-up", 3, 8, Effort.Reserve(2)), SampleCards.Item("countermovement-jump", 2, 4, Effort.Free)], 60),
    ], new(ProgressionKind.Linear, 2.5m, 1));

    public static readonly HomeProgramme Break = new(new("h"), "Summer break", First, 3, new([Equipment.Band, Equipment.Track], new(2, 20, 2, MassUnit.Kilogram)),
        [new(DayOfWeek.Monday, AtHome.Id), new(DayOfWeek.Wednesday, null, new HomeRun(6, 300, WorkUnit.Metres, new Percent(95), 90, 20)), new(DayOfWeek.Friday, AtHome.Id, new HomeRun(1, 1_500, WorkUnit.Seconds, new Percent(70)), "After school")]);

    /// <summary>4 m/s: 1,500 m in 6:15.</summary>
    public static Player Ran(this Player player) => player with { Runs = [new(Guid.Empty, player.Id, SampleCards.Day.AddDays(-7), 1_500, 375, default)] };

    public static Player Aged(this Player player, int years) => player with { Athlete = player.Athlete with { Born = SampleCards.Day.AddYears(-years) } };

    public static SquadHome Pages(IReadOnlyCollection<Player> players, HomeProgramme? programme = null)
    {
        var book = new SeasonBook(8);
        book.Write(new SetWorkout(AtHome));
        book.Write(new SetStaff(new("doc"), StaffRole.Doctor));
        book.Write(new SetStaff(new("fit"), StaffRole.StrengthAndConditioning));
        book.Write(new SetHomeProgramme(programme ?? Break));
        return SquadHome.Of(new SharedSeason(book.Season, SampleCards.Setup(), Edition.Draft(SampleCards.Day)), programme ?? Break, players, new Dictionary<PersonId, string> { [new("doc")] = "Dr Wexcombe" });
    }
}
