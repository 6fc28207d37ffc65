using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests.Workouts;

/// <summary>What there is to lift with, said field by field.</summary>
public sealed class WritingGymTests
{
    private static readonly Setup Team = Setup.Empty(new("team"));

    private static Core.Setups.Gym Made(string field, string text = "") => WritingGym.Write(Team, field, text).Edit!.Gym;

    [Fact]
    public void Racks_are_said_as_typed()
    {
        Assert.Equal(new Weight(15), Made("rack/0/bar", "15 kg").Racks[0].Bar);
        Assert.Equal(new Weight(45, MassUnit.Pound), Made("rack/0/bar", "45lb").Racks[0].Bar);
        Assert.Equal(new Weight(17.5m), Made("rack/0/bar", "17,5").Racks[0].Bar);
        Assert.Equal([new(25, 2), new(20), new(1.25m, 3)], Made("rack/0/plates", "1,25x3; 20, 25x2").Racks[0].Plates);
        Assert.Empty(Made("rack/0/plates", "").Racks[0].Plates);
        Assert.Equal((true, true, 2.5m), (Made("rack/0/platform", "yes").Racks[0].HasPlatform, Made("rack/0/broken", "yes").Racks[0].IsBroken, Made("rack/0/collar", "2.5").Racks[0].Collar));
        Assert.Equal(["1", "2"], Made("rack/add").Racks.Select(rack => rack.Name), StringComparer.Ordinal);
        Assert.Empty(Made("rack/0/remove").Racks);
    }

    [Fact]
    public void So_is_everything_else()
    {
        Assert.Equal(new WeightSteps(2.5m, 30, 2.5m, MassUnit.Kilogram), Made("dumbbells", "2,5 - 30 by 2,5").Dumbbells);
        Assert.Equal(new WeightSteps(5, 75, 5, MassUnit.Pound), Made("kettlebells", "5 to 75 by 5 lb").Kettlebells);
        Assert.Null(Made("dumbbells", "").Dumbbells);
        Assert.Equal((new Weight(2.5m), new Weight(25)), (Made("stack", "2.5 kg").StackStep, Made("trap", "25").TrapBar));
        Assert.True(Made("never-above", "yes").NeverAbove);
        Assert.DoesNotContain(Equipment.Sled, Made("has/sled").Equipment);
    }

    [Theory]
    [InlineData("rack/0/name", " ")]
    [InlineData("rack/0/bar", "0 kg")]
    [InlineData("rack/0/bar", "heavy")]
    [InlineData("rack/0/plates", "20 20")]
    [InlineData("rack/0/plates", "twenty")]
    [InlineData("rack/0/plates", "20x0")]
    [InlineData("rack/0/plates", "-5")]
    [InlineData("rack/0/collar", "-1")]
    [InlineData("dumbbells", "30-2 by 2 kg")]
    [InlineData("dumbbells", "2-30 by 0")]
    [InlineData("kettlebells", "some")]
    [InlineData("stack", "0")]
    public void What_is_wrong_is_told_and_changes_nothing(string field, string text)
    {
        var written = WritingGym.Write(Team, field, text);
        Assert.Null(written.Edit);
        Assert.EndsWith(".", written.Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rack/9/name")]
    [InlineData("has/squirrel")]
    [InlineData("has/99")]
    [InlineData("nonsense")]
    public void A_field_that_is_not_there_changes_nothing(string field) => Assert.Equal(new WritingGym(null, null), WritingGym.Write(Team, field, "yes"));

    [Fact]
    public void What_is_shown_is_read_as_the_same()
    {
        var gym = Team.Gym;
        Assert.Null(WritingGym.Write(Team, "rack/0/plates", WritingGym.Plates(gym.Racks[0], Team.Locale)).Edit);
        Assert.Null(WritingGym.Write(Team, "dumbbells", StepsText.Of(gym.Dumbbells, Team.Locale)).Edit);
    }
}
