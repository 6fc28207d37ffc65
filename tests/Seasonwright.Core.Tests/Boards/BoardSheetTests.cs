using Seasonwright.Core.Boards;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Core.Tests.Squad;
using static Seasonwright.Core.Tests.Boards.BoardDay;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Boards;

/// <summary>What a board can look up while it is cut off.</summary>
public class BoardSheetTests
{
    /// <summary>On every rack the weight that its own card would have.</summary>
    [Fact]
    public void Each_rack_has_its_own_weight_for_everybody()
    {
        var gym = Racks(2) with { NeverAbove = true };
        gym = gym with { Racks = [gym.Racks[0], gym.Racks[1] with { Plates = [new(20, 3), new(10), new(3)] }] };
        var (squad, season, setup) = (Lifters(12), Season(Everything), Setup(gym));
        var sheet = BoardSheet.Of(season, setup, AtNine, squad)!;
        var looked = 0;
        foreach (var (rack, at) in gym.Racks.Select((rack, at) => (rack, at)))
            foreach (var work in AthleteWork.Of(season, setup, AtNine, squad, RackLoads.Of(gym, rack)))
                foreach (var line in work.Lines.Where(line => line.Part.IsWork && line.Load.Made is not null))
                {
                    var board = sheet.Athletes.Single(one => one.Athlete.Id == work.Person).Line(line.Item.Id, null)!;
                    var load = board.Loads.Single(load => sheet.Racks[at].Ladders.Contains(load.Ladder));
                    Assert.Equal(line.Load.Made, sheet.Ladders[load.Ladder][load.At!.Value]);
                    looked++;
                }
        Assert.True(looked >= 24, $"{looked}");
    }

    /// <summary>
    /// 80 kg of 100 for five. Textbook table (rep-max-table.csv): seven at 83 %, eight at 80, nine at 77, ten at 75. Two left tell of 80 / 0.83 = 96.4 kg, 77.1 to do: 77.5. Four left: 80 / 0.77 = 103.9, 83.1: 82.5.
    /// Five left: 106.7, held to 105: 84, 85 is nearest. None left (five at 87 %): 92, held to 95: 76, 75 is nearest.
    /// </summary>
    [Theory]
    [InlineData(0, "75")]
    [InlineData(2, "77.5")]
    [InlineData(3, "80")]
    [InlineData(4, "82.5")]
    [InlineData(5, "85")]
    [InlineData(6, "85")]
    public void The_first_set_adjusts_the_rest(int left, string weight) => Assert.Equal(weight, After(Strong, left));

    [Fact]
    public void The_young_and_who_is_modified_do_not_lift_more_because_a_day_is_good()
    {
        foreach (var player in new[] { Minor, Strong.Reported(Availability.Modified(new([], new Minutes(30))), Monday) })
        {
            var written = After(player, null);
            Assert.Equal(written, After(player, SetMark.MostLeft));
            Assert.True(decimal.Parse(After(player, 0), System.Globalization.CultureInfo.InvariantCulture) < decimal.Parse(written, System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void A_swap_is_offered_to_whoever_may_do_it_and_has_its_own_weight()
    {
        var restricted = Lifter(1).Reported(Availability.Modified(new([RestrictionTag.NoAxialLoad])), Monday);
        var sheet = Sheet([Lifter(0), restricted], Racks(1));
        var squat = sheet.Items.Single(item => item.Exercise.Id.Text == "back-squat");
        Assert.Contains(squat.Swaps, swap => !swap.Equipment.Contains(Equipment.Rack) && swap.Load != LoadedBy.Bar);
        foreach (var swap in squat.Swaps)
        {
            Assert.Equal(swap.Id, sheet.Athletes[0].Line(squat.Item.Item.Id, swap.Id)!.Line.Exercise.Id);
            var hers = sheet.Athletes[1].Line(squat.Item.Item.Id, swap.Id)!.Line.Exercise;
            Assert.DoesNotContain(Demand.Spine, hers.Demands);
        }
        Assert.Contains(squat.Swaps, swap => swap.Demands.Contains(Demand.Spine));
        Assert.DoesNotContain(sheet.Athletes[1].Lines, line => line.Line.Exercise.Demands.Contains(Demand.Spine));
    }

    [Fact]
    public void Who_has_no_maximum_has_a_place_to_start_from_but_no_weight()
    {
        var sheet = Sheet([AnyPlayer.Ida], Racks(1));
        var load = Assert.Single(sheet.Athletes[0].Line(new("back-squat"), null)!.Loads);
        Assert.Null(load.At);
        Assert.Equal(20, sheet.Ladders[load.Ladder][0].Weight.Amount);
    }

    [Fact]
    public void Nothing_written_no_board() => Assert.Null(BoardSheet.Of(Season(TwoParts), Setup(Racks(1)), AtNine with { Workout = null }, Lifters(2)));

    [Fact]
    public void A_gym_without_racks_has_a_board_all_the_same()
    {
        var sheet = Sheet(Lifters(3), FullGym with { Racks = [] });
        Assert.Empty(sheet.Racks);
        Assert.Equal(3, sheet.Athletes.Count(one => one.Work.IsLifting));
    }

    private static string After(Player player, int? left)
    {
        var sheet = Sheet([player], FullGym, new Workout(All, "Squat", [Straight(Item("back-squat", 4, 5, Effort.OfMax(80)))], Progression.None));
        var load = Assert.Single(sheet.Athletes[0].Line(new("back-squat"), null)!.Loads);
        return Plain(sheet.Ladders[load.Ladder][left is { } told ? load.ByLeft[told] : load.At!.Value]);
    }
}
