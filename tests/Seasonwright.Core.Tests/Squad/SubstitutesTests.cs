using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using static Seasonwright.Core.Squad.RestrictionTag;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What is ruled out and what is done instead. Common practice, no source; a licensed clinician has the last word.</summary>
public class SubstitutesTests
{
    private static readonly RestrictionTag[] Tags = Enum.GetValues<RestrictionTag>();

    /// <summary>Every set of none to three restrictions.</summary>
    private static readonly List<Restrictions> Sets = Tags.SelectMany(one => Tags.SelectMany(two => Tags.Select(three => new Restrictions([one, two, three])))).Prepend(Restrictions.None).Distinct().ToList();

    private static Exercise Book(string id) => ExerciseBook.Find(new(id))!;

    private static IEnumerable<Exercise> LeftBy(params RestrictionTag[] tags) => ExerciseBook.All.Where(exercise => new Restrictions(tags).RulingOut(exercise).Count == 0);

    private static int Left(RestrictionTag tag, MovementPattern pattern) => LeftBy(tag).Count(exercise => exercise.Pattern == pattern);

    [Fact]
    public void Every_restriction_rules_something_out_and_leaves_enough() => Assert.All(Tags, tag =>
    {
        var left = LeftBy(tag).ToList();
        Assert.True(left.Count is >= 12 && left.Count < ExerciseBook.All.Length, $"{tag}: {left.Count}");
        Assert.True(left.Select(exercise => exercise.Pattern).Distinct().Count() >= 4, $"{tag}");
    });

    [Theory]
    [InlineData(NoLoadedKneeFlexionPast90, new[] { MovementPattern.Squat, MovementPattern.Lunge, MovementPattern.Hinge, MovementPattern.KneeFlexion, MovementPattern.Jump })]
    [InlineData(NoAxialLoad, new[] { MovementPattern.Squat, MovementPattern.Lunge, MovementPattern.Hinge, MovementPattern.HorizontalPush, MovementPattern.HorizontalPull, MovementPattern.Trunk })]
    [InlineData(NoOverhead, new[] { MovementPattern.HorizontalPush, MovementPattern.HorizontalPull, MovementPattern.Shoulder, MovementPattern.Throw, MovementPattern.FastLift })]
    [InlineData(NoSprint, new[] { MovementPattern.Run, MovementPattern.Jump })]
    [InlineData(NoJump, new[] { MovementPattern.Run, MovementPattern.FastLift, MovementPattern.Throw })]
    [InlineData(UpperBodyOnly, new[] { MovementPattern.HorizontalPush, MovementPattern.HorizontalPull, MovementPattern.VerticalPush, MovementPattern.VerticalPull, MovementPattern.Arms, MovementPattern.Shoulder, MovementPattern.Trunk, MovementPattern.Throw, MovementPattern.Conditioning })]
    [InlineData(LowerBodyOnly, new[] { MovementPattern.Squat, MovementPattern.Lunge, MovementPattern.Hinge, MovementPattern.KneeFlexion, MovementPattern.HipSides, MovementPattern.LowerLeg, MovementPattern.Jump, MovementPattern.Run, MovementPattern.Conditioning })]
    public void A_restriction_leaves_choice_in_what_it_does_not_concern(RestrictionTag tag, MovementPattern[] patterns) =>
        Assert.All(patterns, pattern => Assert.True(Left(tag, pattern) >= 4, $"{tag} {pattern}: {Left(tag, pattern)}"));

    [Theory]
    [InlineData(UpperBodyOnly, MovementPattern.Squat)]
    [InlineData(UpperBodyOnly, MovementPattern.Run)]
    [InlineData(LowerBodyOnly, MovementPattern.HorizontalPush)]
    [InlineData(NoJump, MovementPattern.Jump)]
    [InlineData(NoOverhead, MovementPattern.VerticalPush)]
    [InlineData(NoAxialLoad, MovementPattern.Carry)]
    public void What_a_restriction_names_is_ruled_out_whole(RestrictionTag tag, MovementPattern pattern) => Assert.Equal(0, Left(tag, pattern));

    [Fact]
    public void Each_restriction_rules_out_what_it_says()
    {
        Assert.Equal([NoLoadedKneeFlexionPast90, UpperBodyOnly, NoAxialLoad], new Restrictions(Tags.Except([LowerBodyOnly])).RulingOut(Book("back-squat")));
        Assert.Equal([NoOverhead], new Restrictions([NoOverhead, NoSprint, UpperBodyOnly, NoAxialLoad]).RulingOut(Book("pull-up")));
        Assert.Equal([NoSprint, NoChangeOfDirection], new Restrictions([NoSprint, NoJump, NoChangeOfDirection, NoContact]).RulingOut(Book("repeated-turn-sprints")));
        Assert.Empty(new Restrictions([], new(30)).RulingOut(Book("back-squat")));
        Assert.Equal([UpperBodyOnly, LowerBodyOnly], new Restrictions([UpperBodyOnly, LowerBodyOnly]).RulingOut(Book("chin-tuck")));
    }

    /// <summary>Over all exercises and all sets of restrictions: what is put in the place may be done, and is itself exactly where that may be done.</summary>
    [Fact]
    public void Nothing_that_is_ruled_out_is_put_in_the_place()
    {
        var (same, other, none) = (0, 0, 0);
        foreach (var restrictions in Sets)
        {
            foreach (var exercise in ExerciseBook.All)
            {
                var instead = Substitutes.For(exercise, restrictions, null, ExerciseBook.All);
                var isFree = restrictions.RulingOut(exercise).Count == 0;
                if (instead is null) none++;
                else if (ReferenceEquals(instead, exercise)) same++;
                else other++;
                Assert.Equal(isFree, ReferenceEquals(instead, exercise));
                if (instead is null || isFree) continue;
                Assert.Empty(restrictions.RulingOut(instead));
                Assert.Empty(instead.Demands.Except(exercise.Demands).Intersect([Demand.Sprint, Demand.Jump, Demand.ChangeOfDirection, Demand.Contact]));
            }
        }
        Assert.Equal(Sets.Count * ExerciseBook.All.Length, same + other + none);
        Assert.True(same > 1000 && other > 1000 && none > 1000, $"{same} {other} {none}");
    }

    [Fact]
    public void Only_what_is_at_hand_is_put_in_the_place()
    {
        foreach (var hand in new HashSet<Equipment>[] { [], [Equipment.Band], [Equipment.Dumbbells, Equipment.Bench], [Equipment.Barbell, Equipment.Rack] })
            foreach (var restrictions in Sets.Where(set => set.Tags.Count < 2))
                Assert.All(ExerciseBook.All.Select(exercise => Substitutes.For(exercise, restrictions, hand, ExerciseBook.All)).OfType<Exercise>(), instead => Assert.True(
                    instead.Equipment.All(hand.Contains) && restrictions.RulingOut(instead).Count == 0, instead.Name));
    }

    [Fact]
    public void The_order_of_the_list_does_not_matter()
    {
        var backwards = ExerciseBook.All.Reverse().ToList();
        foreach (var restrictions in Sets.Where(set => set.Tags.Count == 1))
            Assert.All(ExerciseBook.All, exercise => Assert.Same(Substitutes.For(exercise, restrictions, null, ExerciseBook.All), Substitutes.For(exercise, restrictions, null, backwards)));
    }

    /// <summary>What a coach would choose; common practice, no source.</summary>
    [Theory]
    [InlineData("back-squat", NoAxialLoad, "leg-press")]
    [InlineData("back-squat", NoLoadedKneeFlexionPast90, "box-squat")]
    [InlineData("back-squat", UpperBodyOnly, null)]
    [InlineData("bench-press", LowerBodyOnly, null)]
    [InlineData("deadlift", NoAxialLoad, "bar-glute-bridge")]
    [InlineData("overhead-press", NoOverhead, "bench-press")]
    [InlineData("pull-up", NoOverhead, "straight-arm-pull-down")]
    [InlineData("bent-over-row", NoAxialLoad, "dumbbell-row")]
    [InlineData("power-clean", NoJump, "hang-high-pull")]
    [InlineData("flying-sprint", NoSprint, "sprint-march")]
    [InlineData("repeated-sprints", UpperBodyOnly, "easy-arm-bike")]
    [InlineData("countermovement-jump", NoJump, "scoop-throw")]
    [InlineData("countermovement-jump", UpperBodyOnly, null)]
    [InlineData("easy-bike", NoLoadedKneeFlexionPast90, "water-run")]
    [InlineData("trap-bar-deadlift", NoAxialLoad, "bar-glute-bridge")]
    [InlineData("split-squat", NoLoadedKneeFlexionPast90, "step-up")]
    [InlineData("step-up", NoAxialLoad, "short-one-leg-press")]
    public void A_coach_would_choose_alike(string exercise, RestrictionTag tag, string? instead) =>
        Assert.Equal(instead, Substitutes.For(Book(exercise), new([tag]), null, ExerciseBook.All)?.Id.Text);

    [Theory]
    [InlineData("back-squat", "body-squat")]
    [InlineData("bench-press", "press-up")]
    [InlineData("one-arm-bench-press", "press-up")]
    [InlineData("lat-pull-down", "towel-pull-down")]
    [InlineData("nordic-lower", "hamstring-walkout")]
    [InlineData("leg-extension", "half-body-squat")]
    public void At_home_with_nothing(string exercise, string instead) =>
        Assert.Equal(instead, Substitutes.For(Book(exercise), Restrictions.None, new HashSet<Equipment>(), ExerciseBook.All)?.Id.Text);

    [Fact]
    public void A_circle_of_a_teams_own_ends()
    {
        Exercise Own(string id, string easier) => new(new(id), id, MovementPattern.Neck, LoadedBy.Nothing, [Muscle.Neck], [], [Demand.Overhead], Easier: new(easier));
        Exercise[] own = [Own("a", "b"), Own("b", "c"), Own("c", "b")];
        Assert.Null(Substitutes.For(own[0], new([NoOverhead]), null, own));
        Assert.Null(Substitutes.For(own[0] with { Easier = own[0].Id }, new([NoOverhead]), null, own));
    }

    [Fact]
    public void It_is_said_why()
    {
        var restrictions = new Restrictions([NoAxialLoad, NoJump]);
        Assert.Equal("Back squat is ruled out (no axial load): Leg press instead.", restrictions.Why(Book("back-squat"), Book("leg-press")));
        Assert.Equal("Pogo jump is ruled out (no jump): nothing of this is left.", restrictions.Why(Book("pogo-jump"), null));
        Assert.Null(restrictions.Why(Book("press-up"), Book("press-up")));
    }
}
