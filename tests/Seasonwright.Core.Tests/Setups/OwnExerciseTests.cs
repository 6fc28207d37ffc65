using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Setups;

/// <summary>The team's own exercises over the book's.</summary>
public class OwnExerciseTests
{
    private static readonly Exercise Own = new(new("chain-squat"), "Squat with chains", MovementPattern.Squat, LoadedBy.Bar, [Muscle.Quadriceps], [Equipment.Barbell], [Demand.Legs], Easier: new("back-squat"), MaxOf: new("back-squat"), MaxShare: new(90));

    private static Setup After(params SetupEdit[] edits) =>
        edits.Aggregate(Setup.Empty(new("team")), (setup, edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step));

    [Fact]
    public void A_team_starts_with_the_book_by_pattern_and_name()
    {
        var exercises = After().Exercises;
        Assert.Equal(ExerciseBook.All.ToHashSet(), exercises.ToHashSet());
        Assert.Equal(exercises.Select(exercise => exercise.Pattern).Order(), exercises.Select(exercise => exercise.Pattern));
        Assert.All(exercises.GroupBy(exercise => exercise.Pattern), pattern => Assert.Equal(pattern.Select(exercise => exercise.Name).Order(StringComparer.OrdinalIgnoreCase), pattern.Select(exercise => exercise.Name), StringComparer.Ordinal));
    }

    [Fact]
    public void Its_own_stands_in_its_place_and_leaves_it_again()
    {
        var book = ExerciseBook.Find(new("back-squat"))!;
        var ours = book with { Name = "Back squat, low bar" };
        var team = After(new SetExercise(Own), new SetExercise(ours));
        Assert.Equal(ExerciseBook.All.Length + 1, team.Exercises.Length);
        Assert.Equal((Own, ours), (team.Exercise(Own.Id), team.Exercise(book.Id)));
        Assert.Contains(ours, team.Exercises);
        Assert.DoesNotContain(book, team.Exercises);

        var back = After(new SetExercise(Own), new SetExercise(ours), new RemoveExercise(book.Id));
        Assert.Equal((Own, book), (back.Exercise(Own.Id), back.Exercise(book.Id)));
        Assert.Null(After(new SetExercise(Own), new RemoveExercise(Own.Id)).Exercise(Own.Id));
    }

    [Fact]
    public void One_that_is_gone_is_named_by_no_other()
    {
        var heavier = Own with { Id = new("heavier"), Name = "Squat with more chains", Easier = new("plain"), Harder = new("back-squat"), MaxOf = new("plain") };
        var team = After(new SetExercise(Own with { Id = new("plain"), MaxOf = null, MaxShare = null }), new SetExercise(heavier), new RemoveExercise(new("plain")));
        Assert.Equal(heavier with { Easier = null, MaxOf = null, MaxShare = null }, team.Exercise(heavier.Id));
    }
}
