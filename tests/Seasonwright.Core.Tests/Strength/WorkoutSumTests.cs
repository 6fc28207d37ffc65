using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Tests.Strength;

/// <summary>What a workout comes to, worked out by hand.</summary>
public class WorkoutSumTests
{
    private static readonly Setup Team = Setup.Empty(new("team"));

    private static WorkoutItem Item(string id, string exercise, int sets, int amount, Effort effort, WorkUnit unit = WorkUnit.Repetitions, Tempo? tempo = null) => new(new(id), new(exercise), new(sets, amount, unit, effort, tempo));

    private static readonly Workout Day = new(new("k"), "Day",
    [
        new(PartKind.WarmUp, [Item("w", "goblet-squat", 2, 10, Effort.Free)], 30),
        new(PartKind.Straight, [Item("a", "back-squat", 5, 3, Effort.OfMax(85), tempo: new Tempo(2, 0, null, 0)), Item("b", "bench-press", 3, 8, Effort.OfMax(60))], 180),
        new(PartKind.Superset, [Item("c", "pull-up", 3, 8, Effort.Reserve(2)), Item("d", "nordic-lower", 2, 5, Effort.Free)], 90),
        new(PartKind.Circuit, [Item("e", "hurdle-jump", 3, 5, Effort.Free), Item("f", "plank", 3, 30, Effort.Free, WorkUnit.Seconds)], 60),
    ], Progression.None);

    private static WorkoutSum Sum => WorkoutSum.Of(WorkoutWeek.Written(Day), Find);

    // Exercises of its own, so that the book can change.
    private static Exercise? Find(ExerciseId id) => id.Text switch
    {
        "goblet-squat" => Of(id, MovementPattern.Squat, LoadedBy.OneDumbbell),
        "back-squat" => Of(id, MovementPattern.Squat, LoadedBy.Bar),
        "bench-press" => Of(id, MovementPattern.HorizontalPush, LoadedBy.Bar),
        "pull-up" => Of(id, MovementPattern.VerticalPull, LoadedBy.OnTheBody),
        "nordic-lower" => Of(id, MovementPattern.KneeFlexion, LoadedBy.Nothing),
        "hurdle-jump" => Of(id, MovementPattern.Jump, LoadedBy.Nothing) with { Contacts = 1, IsOneSided = true },
        "plank" => Of(id, MovementPattern.Trunk, LoadedBy.Nothing),
        _ => null,
    };

    private static Exercise Of(ExerciseId id, MovementPattern pattern, LoadedBy load) => new(id, id.Text, pattern, load, [], [], []);

    [Fact]
    public void Hard_sets_are_those_with_few_repetitions_left() =>
        // 8 at 60 %: more than fifteen are possible, none is hard. 3 at 85 %: six are.
        Assert.Equal([new(MovementPattern.Squat, 5), new(MovementPattern.KneeFlexion, 2), new(MovementPattern.VerticalPull, 3), new(MovementPattern.Trunk, 3)], Sum.HardSets);

    [Fact]
    public void Repetitions_lie_in_zones_of_the_maximum()
    {
        // 8 with 2 in reserve: the table's row of ten, 75 %.
        Assert.Equal([("back-squat", 80m, 15), ("pull-up", 70m, 24), ("bench-press", 0m, 24)], Sum.Zones.Select(zone => (zone.Exercise.Text, zone.Zone.From, zone.Sets.Sum())));
        Assert.Equal(ZoneVolume.Optimal, Sum.Zones[0].Verdict.Volume);
        Assert.Equal(new Intensity(85), Sum.Top);
    }

    [Fact]
    public void Volume_load_of_a_maximum_of_one() => Assert.Equal(5 * 3 * 0.85m + 3 * 8 * 0.6m + 3 * 8 * 0.75m, Sum.RelativeVolume);

    [Fact]
    public void Contacts_count_for_both_sides() => Assert.Equal(3 * 5 * 2, Sum.Contacts);

    [Fact]
    public void Time_is_work_and_rest()
    {
        var warmUp = 60 + 2 * 30 + 2 * (30 + 15);
        var straight = 2 * 60 + 5 * (9 + 180) + 3 * (24 + 180);
        var superset = 2 * 60 + 3 * 90 + 3 * (24 + 15) + 2 * (15 + 15);
        var circuit = 2 * 60 + 3 * 60 + 3 * (30 + 15) + 3 * (30 + 15);
        Assert.Equal(warmUp + straight + superset + circuit, Sum.Seconds);
        Assert.Equal((Sum.Seconds + 59) / 60, Sum.Minutes);
    }

    [Fact]
    public void It_gives_the_team_qualities_their_doses()
    {
        var doses = WorkoutDoses.Of(Sum, Day, SessionKind.LowerStrength, Team);
        Assert.Equal([new(new("maximum-strength"), 11, new Percent(85)), new Dose(new("power"), Contacts: 30), new Dose(new("prevention"), 2)], doses);
        Assert.Equal(new("hypertrophy"), WorkoutDoses.Of(Sum, Day with { Quality = new("hypertrophy") }, SessionKind.LowerStrength, Team)[0].Quality);
    }

    [Fact]
    public void An_exercise_that_is_gone_costs_time_alone()
    {
        var gone = new Workout(new("k"), "Gone", [new(PartKind.Straight, [Item("a", "gone", 3, 10, Effort.OfMax(80))], 60)], Progression.None);
        Assert.Equal(new WorkoutSum([], [], 0, null, 0, 0, 60 + 3 * (30 + 60)), WorkoutSum.Of(WorkoutWeek.Written(gone), Find));
    }
}
