using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>Which lifts stand on the sheet of a squad, and what is known of whom.</summary>
public sealed class StrengthTableTests
{
    private static readonly DateOnly Day = new(2027, 10, 18);
    private static readonly Setup Setup = Setup.Empty(new("team"));

    [Fact]
    public void What_most_players_are_tested_in_comes_first_and_six_at_most()
    {
        string[] lifts = ["back-squat", "bench-press", "pull-up", "trap-bar-deadlift", "front-squat", "overhead-press", "deadlift"];
        // The first lift is tested by one player, the next by two, and so on.
        var players = Enumerable.Range(0, lifts.Length).Select(at => Player($"p{at}", [.. lifts.Skip(at).Select(lift => Test($"p{at}", lift, 100, 1, Day))])).ToList();
        Assert.Equal("deadlift, overhead-press, front-squat, trap-bar-deadlift, pull-up, bench-press", string.Join(", ", StrengthTable.Of(players, Day, Setup).Exercises.Select(exercise => exercise.Id)));
    }

    [Fact]
    public void Nothing_of_a_later_day_counts_and_who_has_nothing_has_a_row()
    {
        var table = StrengthTable.Of([Player("ida", Test("ida", "back-squat", 100, 1, Day), Test("ida", "back-squat", 120, 1, Day.AddDays(1)), Test("ida", "deadlift", 90, 1, Day.AddDays(1))), Player("tuva")], Day, Setup);
        Assert.Equal("back-squat", Assert.Single(table.Exercises).Id.Text);
        Assert.Equal("100 kg, ", string.Join(", ", table.Rows.Select(row => row.Maxima.Single()?.Weight)));
        Assert.Empty(StrengthTable.Of([Player("tuva")], Day, Setup).Exercises);
    }

    private static Player Player(string id, params LiftTest[] lifts) => new(new Athlete(new(id), id, "", null, [], null, null), [], [], [], [], lifts.ToValueList(), [], []);

    private static LiftTest Test(string person, string exercise, decimal kilograms, int repetitions, DateOnly day) => new(Guid.NewGuid(), new(person), new(exercise), day, new Weight(kilograms), repetitions, null, default);
}
