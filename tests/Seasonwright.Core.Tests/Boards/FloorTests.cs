using CsCheck;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Core.Tests.Boards.BoardDay;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Boards;

/// <summary>How many the room holds, and what to do where it is too small. Common practice, no source; the numbers are counted by hand.</summary>
public class FloorTests
{
    [Fact]
    public void Twenty_five_on_six_racks_are_one_too_many()
    {
        var sheet = Sheet(Lifters(25), Racks(6));
        var need = Assert.Single(FloorNeed.Of(sheet, State()));
        Assert.Equal((Equipment.Rack, 25, 6, 5, true), (need.What, need.Athletes, need.Places, need.AtFullest, need.IsShort));
        Assert.Equal("Back squat: 25 athletes on 6 racks are 5 at the fullest, and 4 share one at most.", need.Sentence);
        Assert.Equal([FloorWayKind.Together, FloorWayKind.Split, FloorWayKind.OtherBars, FloorWayKind.Waves], FloorWay.Of(sheet, State()).Select(way => way.Kind));
        // 24 fit: one does something else, who lifts least.
        var other = FloorWay.Of(sheet, State()).Single(way => way.Kind == FloorWayKind.OtherBars);
        Assert.Equal("p24", Assert.Single(other.Swaps).Person.Text);
        Assert.DoesNotContain(sheet.Exercise(other.Swaps[0].Exercise)!.Equipment, one => one == Equipment.Rack);
        // And with that, nothing is short any more.
        Assert.DoesNotContain(FloorNeed.Of(sheet, State(new SwapMark(Id(1), At(1), other.Swaps[0].Person, other.Swaps[0].Item, other.Swaps[0].Exercise))), one => one.IsShort);
    }

    [Fact]
    public void Who_is_away_needs_no_rack_and_who_is_late_does()
    {
        var sheet = Sheet(Lifters(25), Racks(6));
        Assert.False(FloorNeed.Of(sheet, State(new CameMark(Id(1), At(1), new("p3"), Attendance.Away)))[0].IsShort);
        Assert.True(FloorNeed.Of(sheet, State(new CameMark(Id(1), At(1), new("p3"), Attendance.Late)))[0].IsShort);
    }

    [Fact]
    public void A_broken_bar_is_told_and_nobody_stands_there()
    {
        var (sheet, state) = (Sheet(Lifters(24), Racks(6)), State(new RackMark(Id(1), At(1), "4", true)));
        Assert.False(FloorNeed.Of(sheet, State())[0].IsShort);
        Assert.Equal("Back squat: 24 athletes on 5 racks are 5 at the fullest, and 4 share one at most.", FloorNeed.Of(sheet, state)[0].Sentence);
        Assert.All(FloorWay.Of(sheet, state), way => Assert.DoesNotContain(way.Stands, stand => stand.Rack == "4"));
    }

    [Fact]
    public void What_nobody_counted_is_never_short_and_what_was_counted_is()
    {
        var squad = Lifters(10);
        var trap = new Workout(All, "Trap bar", [Straight(Item("trap-bar-deadlift", 3, 4, Effort.OfMax(80)))], Progression.None);
        Assert.Empty(FloorNeed.Of(Sheet(squad, Racks(6), trap), State()));
        var need = Assert.Single(FloorNeed.Of(Sheet(squad, Racks(6) with { Counts = [new(Equipment.TrapBar, 2)] }, trap), State()));
        Assert.Equal((true, "Trap-bar deadlift: 10 athletes on 2 × trap bar are 5 at the fullest, and 4 share one at most."), (need.IsShort, need.Sentence));
    }

    /// <summary>Halves of an A/B split: 13 on six racks are three at the fullest; half B does the rest meanwhile, and they change.</summary>
    [Fact]
    public void A_split_gives_both_halves_the_racks_in_turn()
    {
        var way = FloorWay.Of(Sheet(Lifters(25), Racks(6)), State()).Single(way => way.Kind == FloorWayKind.Split);
        Assert.Equal((13, 12), (way.Stands.Count(stand => stand.Half == SquadHalf.A), way.Stands.Count(stand => stand.Half == SquadHalf.B)));
        foreach (var here in way.Stands.GroupBy(stand => $"{stand.Rack} {stand.Half}", StringComparer.Ordinal)) Assert.InRange(here.Count(), 2, 3);
        Assert.Equal("A A 0; B B 0; A B 1; B A 1", string.Join("; ", way.Turns.Select(turn => FormattableString.Invariant($"{turn.Half} {turn.Parts} {(turn.From == way.Turns[0].From ? 0 : 1)}"))));
        Assert.Equal(way.Turns[0].To, way.Turns[2].From);
        // Taken, the racks hold everybody; other ways can be looked at all the same.
        var taken = State([new WayMark(Id(1), At(1), FloorWayKind.Split), .. way.Stands.Select((stand, at) => new StandMark(Id(at + 2), At(1), stand.Person, stand.Rack, stand.Half))]);
        Assert.Equal((13, false, "Back squat: 13 athletes on 6 racks, 3 at the fullest."), FloorNeed.Of(Sheet(Lifters(25), Racks(6)), taken)[0] is var need ? (need.Athletes, need.IsShort, need.Sentence) : default);
        Assert.Equal(4, FloorWay.Of(Sheet(Lifters(25), Racks(6)), taken).Count);
        // Back squat: 60 s to begin, four sets of 5 x 3 s (no tempo asked for, three seconds a repetition) and 150 s of rest: 12 min. Three at a rack take turns of 45 s within that rest.
        // Part B: 2 x 60 s, three sets of 8 x 2 sides x 3 s + 150 s, three of 4 x 3 s + 150 s: 20 min. Twice the longer one.
        Assert.Equal((20, 40), (way.Turns[0].To, way.Minutes));
    }

    /// <summary>Whatever the squad and the room: everybody who lifts at a rack stands at one that works, once, as even as can be, and neighbours by weight.</summary>
    [Fact]
    public void Everybody_stands_somewhere_and_racks_are_as_even_as_can_be() => Gen.Select(Gen.Int[0, 30], Gen.Int[0, 7], Gen.Int[0, 3]).Sample((athletes, racks, broken) =>
    {
        var gym = Racks(racks);
        var (sheet, state) = (Sheet(Lifters(athletes), gym), State([.. Enumerable.Range(0, broken).Select(at => new RackMark(Id(at + 1), At(1), FormattableString.Invariant($"{at + 1}"), true))]));
        // Without a rack in the room everybody does something else from the start.
        var lifters = racks == 0 ? 0 : athletes;
        foreach (var way in FloorWay.Of(sheet, state))
        {
            Assert.Equal(lifters, way.Stands.Select(stand => stand.Person).Distinct().Count());
            Assert.Equal(lifters, way.Stands.Count);
            foreach (var half in way.Stands.GroupBy(stand => stand.Half))
            {
                var at = half.Where(stand => stand.Rack is not null).GroupBy(stand => stand.Rack!, StringComparer.Ordinal).ToList();
                Assert.All(at, here => Assert.True(int.Parse(here.Key, System.Globalization.CultureInfo.InvariantCulture) > broken));
                var usable = Math.Max(0, racks - broken);
                if (usable == 0) Assert.Empty(at);
                else if (way.Kind != FloorWayKind.OtherBars) Assert.True(at.Max(here => here.Count()) <= (half.Count() + usable - 1) / usable);
                // p0 is the heaviest: numbers at a rack follow each other in their half.
                foreach (var here in at.Select(here => here.Select(stand => int.Parse(stand.Person.Text[1..], System.Globalization.CultureInfo.InvariantCulture)).Order().ToList()))
                    Assert.Equal((here.Count - 1) * (half.Key is null ? 1 : 2), here[^1] - here[0]);
            }
        }
    }, iter: 60, threads: 1);
}
