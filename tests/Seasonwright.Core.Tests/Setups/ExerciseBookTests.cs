using System.Text.RegularExpressions;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Core.Setups.MovementPattern;

namespace Seasonwright.Core.Tests.Setups;

/// <summary>Laws that catch a slip of the pen in the book. What each exercise asks for: common practice, no source.</summary>
public partial class ExerciseBookTests
{
    private static readonly Muscle[] OfTheLegs =
        [Muscle.Quadriceps, Muscle.Hamstrings, Muscle.Glutes, Muscle.Adductors, Muscle.Abductors, Muscle.HipFlexors, Muscle.Calves, Muscle.Shins, Muscle.Feet];

    private static readonly Muscle[] OfTheArms =
        [Muscle.Lats, Muscle.Chest, Muscle.Shoulders, Muscle.RotatorCuff, Muscle.Biceps, Muscle.Triceps, Muscle.Forearms];

    /// <summary>What a team needs wherever it is.</summary>
    private static readonly MovementPattern[] Main =
        [Squat, Lunge, Hinge, KneeFlexion, HorizontalPush, VerticalPush, HorizontalPull, VerticalPull, Shoulder, HipSides, LowerLeg, MovementPattern.Neck, Trunk, Rotation, MovementPattern.Jump, Run, Conditioning, Mobility];

    private static IEnumerable<Exercise> Having(params Equipment[] hand) => ExerciseBook.All.Where(exercise => exercise.Equipment.All(hand.Contains));

    private static void All(Func<Exercise, bool> which, Func<Exercise, bool> law)
    {
        var some = ExerciseBook.All.Where(which).ToList();
        Assert.NotEmpty(some);
        Assert.All(some, exercise => Assert.True(law(exercise), exercise.ToString()));
    }

    [Fact]
    public void There_are_many_in_the_order_of_their_patterns()
    {
        Assert.True(ExerciseBook.All.Length >= 170, $"{ExerciseBook.All.Length}");
        Assert.Equal(ExerciseBook.All.OrderBy(exercise => exercise.Pattern), ExerciseBook.All);
        Assert.All(Enum.GetValues<MovementPattern>(), pattern => Assert.True(ExerciseBook.All.Count(exercise => exercise.Pattern == pattern) >= 8, $"{pattern}"));
        Assert.All(Enum.GetValues<Equipment>(), thing => Assert.Contains(ExerciseBook.All, exercise => exercise.Equipment.Contains(thing)));
        Assert.All(Enum.GetValues<Muscle>(), muscle => Assert.Contains(ExerciseBook.All, exercise => exercise.Muscles.Contains(muscle)));
    }

    [Fact]
    public void Ids_and_names_are_plain_and_nobody_elses()
    {
        Assert.Distinct(ExerciseBook.All.Select(exercise => exercise.Id.Text), StringComparer.OrdinalIgnoreCase);
        Assert.Distinct(ExerciseBook.All.Select(exercise => exercise.Name), StringComparer.OrdinalIgnoreCase);
        Assert.All(ExerciseBook.All, exercise => Assert.Matches(PlainId(), exercise.Id.Text));
        Assert.All(ExerciseBook.All, exercise => Assert.Matches(PlainName(), exercise.Name));
        Assert.All(ExerciseBook.All, exercise => Assert.Same(exercise, ExerciseBook.Find(exercise.Id)));
        Assert.Null(ExerciseBook.Find(new("no-such")));
    }

    [Fact]
    public void Lists_hold_each_thing_once()
    {
        All(_ => true, exercise => exercise.Muscles.Count is > 0 and <= 4 && exercise.Muscles.Distinct().Count() == exercise.Muscles.Count);
        All(_ => true, exercise => exercise.Equipment.Distinct().Count() == exercise.Equipment.Count);
        All(_ => true, exercise => exercise.Demands.Distinct().Count() == exercise.Demands.Count);
    }

    [Fact]
    public void Variants_are_of_the_same_pattern_and_lead_nowhere_in_a_circle()
    {
        var easierThan = new List<(ExerciseId Easy, ExerciseId Hard)>();
        foreach (var exercise in ExerciseBook.All)
        {
            foreach (var variant in new[] { exercise.Easier, exercise.Harder }.OfType<ExerciseId>())
                Assert.Equal((exercise.Name, exercise.Pattern), (exercise.Name, ExerciseBook.Find(variant)?.Pattern));
            if (exercise.Easier is { } easier) easierThan.Add((easier, exercise.Id));
            if (exercise.Harder is { } harder) easierThan.Add((exercise.Id, harder));
        }
        // Taken away from the easy end, all go: what is left would be a circle.
        var left = ExerciseBook.All.Select(exercise => exercise.Id).ToHashSet();
        while (left.RemoveWhere(id => !easierThan.Any(pair => pair.Hard == id && left.Contains(pair.Easy))) > 0) { }
        Assert.Empty(left);
    }

    [Fact]
    public void An_easier_one_asks_nothing_more_of_the_body() =>
        All(exercise => exercise.Easier is not null, exercise => !ExerciseBook.Find(exercise.Easier!.Value)!.Demands.Except(exercise.Demands).Any());

    [Fact]
    public void What_is_loaded_is_at_hand()
    {
        var things = new Dictionary<LoadedBy, Equipment[]>
        {
            [LoadedBy.Bar] = [Equipment.Barbell, Equipment.TrapBar],
            [LoadedBy.TwoDumbbells] = [Equipment.Dumbbells],
            [LoadedBy.OneDumbbell] = [Equipment.Dumbbells],
            [LoadedBy.Kettlebell] = [Equipment.Kettlebell],
            [LoadedBy.Stack] = [Equipment.Cable, Equipment.LegPress, Equipment.LegCurl, Equipment.LegExtension, Equipment.CalfMachine],
            [LoadedBy.MedicineBall] = [Equipment.MedicineBall],
            [LoadedBy.Sled] = [Equipment.Sled],
            [LoadedBy.OnTheBody] = [Equipment.PullUpBar, Equipment.DipBars],
        };
        foreach (var (load, any) in things) All(exercise => exercise.Load == load, exercise => exercise.Equipment.Any(any.Contains));
        All(exercise => exercise.Equipment.Any(thing => thing is Equipment.Dumbbells or Equipment.TrapBar or Equipment.Kettlebell or Equipment.Cable or Equipment.Sled or Equipment.LegPress), exercise => exercise.Load != LoadedBy.Nothing);
    }

    [Fact]
    public void What_works_is_asked_for()
    {
        All(exercise => OfTheLegs.Contains(exercise.Muscles[0]), exercise => exercise.Demands.Contains(Demand.Legs));
        All(exercise => OfTheArms.Contains(exercise.Muscles[0]), exercise => exercise.Demands.Contains(Demand.Arms));
        All(exercise => exercise.Load is LoadedBy.Bar or LoadedBy.TwoDumbbells or LoadedBy.OneDumbbell or LoadedBy.Kettlebell or LoadedBy.MedicineBall, exercise => exercise.Demands.Contains(Demand.Arms));
        All(exercise => exercise.Pattern is Squat or Lunge && exercise.Load is not (LoadedBy.Nothing or LoadedBy.Stack), exercise => exercise.Demands.Contains(Demand.Spine));
        All(exercise => exercise.Pattern is Carry or FastLift, exercise => exercise.Demands.Contains(Demand.Spine));
        All(exercise => exercise.Pattern is Run, exercise => exercise.Demands.Contains(Demand.Legs));
    }

    [Fact]
    public void Overhead_is_what_is_overhead()
    {
        All(exercise => exercise.Pattern == VerticalPush, exercise => exercise.Demands.Contains(Demand.Overhead));
        All(exercise => exercise.Equipment.Contains(Equipment.PullUpBar), exercise => exercise.Demands.Contains(Demand.Overhead));
        foreach (var word in new[] { "overhead", "snatch", "jerk", "over the head", "upwards", "arm raised" })
            All(exercise => exercise.Name.Contains(word, StringComparison.OrdinalIgnoreCase), exercise => exercise.Demands.Contains(Demand.Overhead));
    }

    [Fact]
    public void Sprints_and_turns_are_what_they_are_called()
    {
        All(exercise => exercise.Name.Contains("sprint", StringComparison.OrdinalIgnoreCase) && exercise.Pattern == Run && !exercise.Name.Contains("drill", StringComparison.Ordinal), exercise => exercise.Demands.Contains(Demand.Sprint));
        foreach (var word in new[] { "turn", "cut of", "sideways, one leg", "side to side", "stop" })
            All(exercise => exercise.Name.Contains(word, StringComparison.OrdinalIgnoreCase) && exercise.Pattern is Run or MovementPattern.Jump, exercise => exercise.Demands.Contains(Demand.ChangeOfDirection));
        All(exercise => exercise.Demands.Contains(Demand.Sprint), exercise => exercise.Pattern == Run && exercise.Equipment.Contains(Equipment.Track));
    }

    [Fact]
    public void Jumps_land()
    {
        All(exercise => exercise.Pattern == MovementPattern.Jump, exercise => exercise.Contacts > 0);
        All(exercise => exercise.Contacts > 0, exercise => exercise.Demands.Contains(Demand.Jump) && exercise.Demands.Contains(Demand.Legs) && exercise.Contacts <= 3);
        Assert.Equal(2, ExerciseBook.Find(new("drop-jump"))!.Contacts);
        Assert.Equal(3, ExerciseBook.Find(new("triple-jump"))!.Contacts);
    }

    [Fact]
    public void One_side_is_told_from_two()
    {
        All(exercise => exercise.Pattern == Lunge, exercise => exercise.IsOneSided);
        foreach (var word in new[] { "one leg", "single-leg", "one arm", "one-arm" })
            All(exercise => exercise.Name.Contains(word, StringComparison.OrdinalIgnoreCase) && exercise.Pattern is not Run, exercise => exercise.IsOneSided);
        All(exercise => exercise.Load == LoadedBy.Bar && exercise.Pattern is Squat or HorizontalPush or HorizontalPull, exercise => !exercise.IsOneSided);
    }

    [Fact]
    public void A_guess_rests_on_a_maximum_that_rests_on_none() => All(exercise => exercise.MaxOf is not null || exercise.MaxShare is not null, exercise =>
        exercise.HasMax && exercise.MaxShare is { Value: >= Exercise.LeastShare and <= Exercise.MostShare } && exercise.MaxOf is { } of && ExerciseBook.Find(of) is { HasMax: true, MaxOf: null });

    [Fact]
    public void There_is_something_to_do_at_home()
    {
        Assert.All(Main, pattern => Assert.Contains(Having(), exercise => exercise.Pattern == pattern));
        Assert.All(Main.Append(MovementPattern.Arms), pattern => Assert.True(Having(Equipment.Band).Count(exercise => exercise.Pattern == pattern) >= 2 || pattern is Run, $"{pattern}"));
        Assert.All(Main.Append(MovementPattern.Arms).Append(Carry), pattern => Assert.True(Having(Equipment.Dumbbells, Equipment.Bench).Count(exercise => exercise.Pattern == pattern) >= 2 || pattern is Run or VerticalPull, $"{pattern}"));
    }

    [GeneratedRegex("^[a-z]+(-[a-z0-9]+)*$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PlainId();

    [GeneratedRegex("^[A-Z][A-Za-z0-9 ,:'-]{2,58}$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PlainName();
}
