using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests.Workouts;

/// <summary>A workout written field by field.</summary>
public sealed class WritingWorkoutsTests
{
    private static readonly Season Season = Enumerable.Empty<SeasonEdit>().Append(new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, [new("w1"), new("w2")], new("Harbour Vale")))
        .Aggregate(Season.Empty(new("s")), (season, edit) => season.With(((Accepted)Decider.Decide(season, edit)).Step));

    private static readonly Setup Team = Setup.Empty(new("team"));

    private static WorkoutItem Item(string id, string exercise) => new(new(id), new(exercise), new(4, 5, WorkUnit.Repetitions, Effort.OfMax(80)));

    private static readonly Workout Legs = new(new("legs"), "Legs", [new(PartKind.Straight, [Item("a", "back-squat")], 180), new(PartKind.Superset, [Item("b", "deadlift"), Item("c", "pull-up")], 90)], Progression.None);

    private static WritingWorkouts Write(string field, string text = "", Workout? workout = null) => WritingWorkouts.Write(Season, Team, workout ?? Legs, field, text, () => new("new"));

    private static Workout Made(string field, string text = "", Workout? workout = null) => Write(field, text, workout).Edit!.Workout;

    private static string Shape(Workout workout) => string.Join(" | ", workout.Parts.Select(part => string.Join(' ', part.Items.Select(item => item.Id.Text))));

    [Fact]
    public void Fields_are_taken_as_typed()
    {
        Assert.Equal("Legs, heavy", Made("name", " Legs, heavy ").Name);
        Assert.Equal(new QualityId("power"), Made("quality", "power").Quality);
        Assert.Equal(new Progression(ProgressionKind.Wave, 2.5m), Made("progression/kind", "wave").Progression);
        Assert.Equal(1.5m, Made("progression/percent", "1,5").Progression.Percent);
        Assert.Equal((PartKind.Circuit, 45), (Made("part/1/kind", "circuit").Parts[1].Kind, Made("part/1/rest", "45").Parts[1].Rest));
        Assert.Equal(new ExerciseId("front-squat"), Made("item/a/exercise", "front SQUAT").Parts[0].Items[0].Exercise);
        Assert.Equal(new(3, 8, WorkUnit.Repetitions, Effort.Reserve(2)), Made("item/a/does", "3x8 r2").Parts[0].Items[0].Prescription);
        Assert.Equal("belt", Made("item/a/note", "belt").Parts[0].Items[0].Note);
    }

    [Fact]
    public void Exercises_come_move_and_go()
    {
        Assert.Equal("a new | b c", Shape(Made("add/0", "Leg press")));
        Assert.Equal("a | b c | new", Shape(Made("add/new", "Leg press")));
        Assert.Equal("a | c b", Shape(Made("up/c")));
        Assert.Equal("a b | c", Shape(Made("up/b")));
        // The last of a part takes the part along.
        Assert.Equal("a b c", Shape(Made("down/a")));
        Assert.Equal("b c", Shape(Made("remove/a")));
        Assert.Null(Write("up/a").Edit);
        Assert.Null(Write("down/c").Edit);
        Assert.Equal(Effort.Free, Made("add/0", ExerciseBook.Find(new("plank"))!.Name).Parts[0].Items[1].Prescription.Effort);
    }

    [Fact]
    public void A_week_has_its_own_is_left_out_and_follows_again()
    {
        var own = Made("cell/w2/a", "2x3 85%");
        Assert.Equal(new WorkoutCell(new("w2"), new("a"), new(2, 3, WorkUnit.Repetitions, Effort.OfMax(85))), Assert.Single(own.Cells!));
        Assert.Null(Assert.Single(Made("cell/w2/a", "-", own).Cells!).Prescription);
        Assert.Null(Made("cell/w2/a", "", own).Cells);
        // A cell goes with its exercise.
        Assert.Null(Made("remove/a", "", own).Cells);
        Assert.Null(Write("cell/w9/a", "2x3").Edit);
    }

    [Theory]
    [InlineData("name", "  ")]
    [InlineData("item/a/exercise", "Squirrel lift")]
    [InlineData("item/a/does", "lots")]
    [InlineData("item/a/does", "4x5 200%")]
    [InlineData("part/0/rest", "-5")]
    [InlineData("part/0/rest", "an hour")]
    [InlineData("progression/percent", "11")]
    [InlineData("progression/repetitions", "6")]
    [InlineData("add/new", "")]
    [InlineData("cell/w1/a", "5")]
    public void What_is_wrong_is_told_and_changes_nothing(string field, string text)
    {
        var written = Write(field, text);
        Assert.Null(written.Edit);
        Assert.EndsWith(".", written.Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part/7/rest")]
    [InlineData("part/x/kind")]
    [InlineData("item/zz/note")]
    [InlineData("remove/zz")]
    [InlineData("nonsense")]
    [InlineData("cell/w1")]
    [InlineData("name/x")]
    public void A_field_that_is_not_there_any_more_changes_nothing(string field) => Assert.Null(Write(field, "60").Edit);

    [Fact]
    public void What_is_as_it_was_is_no_edit() => Assert.Equal((null, null), (Write("item/a/does", "4x5 80%").Edit, Write("item/a/does", "4x5 80%").Wrong));
}
