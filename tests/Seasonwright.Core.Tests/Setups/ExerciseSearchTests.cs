using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Setups;

public class ExerciseSearchTests
{
    private static IEnumerable<string> Found(string text) => Setup.Empty(new("team")).Exercises.Search(text).Select(exercise => exercise.Id.Text);

    [Theory]
    [InlineData("back squat", "back-squat")]
    [InlineData("SQUAT back", "back-squat")]
    [InlineData("romanian", "romanian-deadlift")]
    [InlineData("rdx", null)]
    [InlineData("nordic", "nordic-lower")]
    [InlineData("press up", "press-up")]
    [InlineData("lunges", "forward-lunge")]
    [InlineData("chest pass", "chest-pass")]
    [InlineData("  pogo ", "pogo-jump")]
    public void What_is_typed_comes_first_among_few(string text, string? id)
    {
        if (id is null) Assert.Empty(Found(text));
        else Assert.Contains(id, Found(text).Take(7), StringComparer.Ordinal);
    }

    [Fact]
    public void A_name_that_starts_comes_before_a_word_that_starts_before_letters_within_before_the_rest()
    {
        Exercise Named(string id, string name, params Equipment[] equipment) => new(new(id), name, MovementPattern.Arms, LoadedBy.Nothing, [Muscle.Biceps], [.. equipment], []);
        Exercise[] some = [Named("rest", "Curl", Equipment.Band), Named("within", "Husband"), Named("word", "Pull of a band"), Named("name", "Band pull"), Named("none", "Curl")];
        Assert.Equal(["name", "word", "within", "rest"], some.Search("band").Select(exercise => exercise.Id.Text), StringComparer.Ordinal);
        Assert.Equal(["name", "word"], some.Search("pul ban").Select(exercise => exercise.Id.Text).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public void Pattern_muscles_and_equipment_are_found_too()
    {
        Assert.All(ExerciseBook.All.Search("hamstrings sliders"), exercise => Assert.True(exercise.Muscles.Contains(Muscle.Hamstrings) && exercise.Equipment.Contains(Equipment.Sliders)));
        Assert.Equal(ExerciseBook.All.Count(exercise => exercise.Pattern == MovementPattern.VerticalPull), ExerciseBook.All.Search("vertical pull").Length);
        Assert.NotEmpty(ExerciseBook.All.Search("hamstrings sliders"));
    }

    [Fact]
    public void Nothing_typed_leaves_all_in_their_order() => Assert.Equal(ExerciseBook.All, ExerciseBook.All.Search("  "));
}
