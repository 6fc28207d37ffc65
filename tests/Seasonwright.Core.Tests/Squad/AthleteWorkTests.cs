using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What each player does of a session's workout. Common practice, no source, but for what is said beside a check; a licensed clinician has the last word on a restriction.</summary>
public class AthleteWorkTests
{
    private static Availability Without(params RestrictionTag[] tags) => Availability.Modified(new(tags));

    [Fact]
    public void Who_is_fit_does_what_is_written_with_weights_of_their_own()
    {
        var work = Of(Strong);
        Assert.Equal("goblet-squat back-squat trap-bar-deadlift nordic-lower bench-press pull-up overhead-press countermovement-jump", Exercises(work));
        Assert.Equal((FitKind.AsPlanned, false, false, true), (work.Fit, work.IsModified, work.IsMinor, work.IsLifting));
        Assert.All(work.Lines, line => Assert.False(line.Instead));
        // Textbook table: seven are possible at 83 %, 49.8 kg of 60; ten in all at 75 %.
        Assert.Equal("80 50 20", string.Join(' ', new[] { "back-squat", "bench-press", "pull-up" }.Select(id => Plain(Line(work, id).Load.Made))));
    }

    [Theory]
    [InlineData(RestrictionTag.NoLoadedKneeFlexionPast90, "back-squat", "box-squat")]
    [InlineData(RestrictionTag.NoAxialLoad, "back-squat", "leg-press")]
    [InlineData(RestrictionTag.NoOverhead, "overhead-press", "bench-press")]
    [InlineData(RestrictionTag.NoJump, "countermovement-jump", "scoop-throw")]
    [InlineData(RestrictionTag.UpperBodyOnly, "back-squat", null)]
    [InlineData(RestrictionTag.LowerBodyOnly, "bench-press", null)]
    public void A_restriction_changes_what_it_rules_out_and_nothing_else(RestrictionTag tag, string written, string? done)
    {
        var (work, free) = (Of(Strong.Reported(Without(tag), Monday)), Of(Strong));
        Assert.True(work.IsModified);
        Assert.Equal(done, work.Lines.FirstOrDefault(line => line.Item.Id.Text == written)?.Exercise.Id.Text);
        foreach (var line in free.Lines.Where(line => new Restrictions([tag]).RulingOut(line.Exercise).Count == 0))
            Assert.Equal(line, Line(work, line.Item.Id.Text));
    }

    /// <summary>Nothing here asks for a sprint, a turn or another player.</summary>
    [Theory]
    [InlineData(RestrictionTag.NoSprint)]
    [InlineData(RestrictionTag.NoChangeOfDirection)]
    [InlineData(RestrictionTag.NoContact)]
    public void A_restriction_that_concerns_nothing_changes_nothing(RestrictionTag tag) => Assert.Equal((Of(Strong).Lines, false), (Of(Strong.Reported(Without(tag), Monday)) is var work ? (work.Lines, work.IsModified) : default));

    [Fact]
    public void Where_nothing_is_left_nothing_is_lifted()
    {
        var legs = Season(new Workout(All, "Legs", [Straight(Item("back-squat", 4, 5, Effort.OfMax(80))), Straight(Item("nordic-lower", 2, 4, Effort.Free))], Progression.None));
        var work = Of(Strong.Reported(Without(RestrictionTag.UpperBodyOnly), Monday), season: legs);
        Assert.Equal((false, true, false), (work.IsLifting, work.IsModified, work.AsksFirst));
    }

    [Fact]
    public void Out_away_and_to_be_asked()
    {
        var isOut = Of(Strong.Reported(Availability.Out, Monday));
        Assert.Equal((FitKind.NotAtAll, false, false), (isOut.Fit, isOut.IsLifting, isOut.IsModified));
        Assert.Empty(AllOf(Strong.AwayFor(AbsenceKind.NationalTeam, new(Monday, Monday.AddDays(4)))));
        var asked = Of(Strong.Reported(Availability.Modified(Restrictions.None), Monday));
        Assert.Equal((true, false, true), (asked.AsksFirst, asked.IsLifting, asked.IsModified));
    }

    [Fact]
    public void A_cap_of_minutes_is_told_and_who_has_used_it_up_is_done_for_the_day()
    {
        var capped = Of(Strong.Reported(Availability.Modified(new([], new Minutes(30))), Monday));
        Assert.Equal((30, true, 8), (capped.MostMinutes?.Value, capped.IsModified, capped.Lines.Count));
        // Practice of 60 minutes comes first and takes all 30 of the day, whatever else is ruled out.
        var before = Season(Everything, new SetSession(AtNine with { Id = new("practice"), Kind = SessionKind.Practice, Start = new(7, 0), Workout = null }));
        foreach (var tags in new RestrictionTag[][] { [], [RestrictionTag.NoOverhead], [RestrictionTag.NoAxialLoad, RestrictionTag.NoOverhead] })
        {
            var done = Of(Strong.Reported(Availability.Modified(new(tags, new Minutes(30))), Monday), season: before);
            Assert.Equal((FitKind.NotAtAll, false), (done.Fit, done.IsLifting));
        }
    }

    [Fact]
    public void A_group_s_session_is_the_group_s()
    {
        var season = Season(Everything, new SetGroup(new(new("young"), "Young")), new SetSession(AtNine with { Groups = [new("young")] }));
        var (young, old) = (Strong with { Groups = [new(Strong.Id, season.Id, new("young"), Monday, null)] }, Strong with { Grouped = [season.Id] });
        Assert.Single(AllOf(young, season));
        Assert.Empty(AllOf(old, season));
    }

    [Fact]
    public void Without_a_maximum_or_a_body_mass_it_is_told_how_hard()
    {
        var (unknown, weightless) = (Of(Strong with { Lifts = [] }), Of(Strong with { Weighings = [] }));
        // Textbook table: eight are possible at 80 %, five are done.
        Assert.Equal((null, 3), (Line(unknown, "back-squat").Load.Target, Line(unknown, "back-squat").Load.Reserve));
        Assert.Null(Line(weightless, "pull-up").Load.Target);
        Assert.Equal(new Weight(80), Line(weightless, "back-squat").Load.Made!.Weight);
    }

    /// <summary>By the textbook table (Haff and Triplett 2016), six are possible at 85 % and two more than are done are left: the limit itself is common practice, no source.</summary>
    [Theory]
    [InlineData(1, EffortKind.OfMax, 100, EffortKind.OfMax, 85)]
    [InlineData(3, EffortKind.OfMax, 90, EffortKind.OfMax, 85)]
    [InlineData(5, EffortKind.OfMax, 80, EffortKind.OfMax, 80)]
    // Eight at 80 % leave none; at 75 % two.
    [InlineData(8, EffortKind.OfMax, 80, EffortKind.OfMax, 75)]
    [InlineData(5, EffortKind.Reserve, 0, EffortKind.Reserve, 2)]
    // One with two in reserve would be 93 %.
    [InlineData(1, EffortKind.Reserve, 2, EffortKind.Reserve, 5)]
    [InlineData(5, EffortKind.Reserve, 4, EffortKind.Reserve, 4)]
    // A weight for everyone: half a player's mass is little, one and a half times it is more than seven repetitions' worth.
    [InlineData(5, EffortKind.OfBodyMass, 50, EffortKind.OfBodyMass, 50)]
    [InlineData(5, EffortKind.OfBodyMass, 150, EffortKind.OfMax, 83)]
    public void Nobody_under_18_lifts_close_to_a_maximum(int repetitions, EffortKind kind, double amount, EffortKind capped, double most)
    {
        var season = Season(new Workout(All, "One", [Straight(Item("back-squat", 3, repetitions, new(kind, (decimal)amount)))], Progression.None));
        var (minor, grown) = (Of(Minor, season: season), Of(Strong, season: season));
        Assert.Equal((true, new Effort(capped, (decimal)most)), (minor.IsMinor, Assert.Single(minor.Lines).Prescription.Effort));
        Assert.Equal(minor.Lines[0].Prescription != grown.Lines[0].Prescription, minor.IsModified);
        Assert.True(minor.Lines[0].Load.Made!.Weight.Kilograms <= 85, "of a maximum of 100 kg");
    }

    [Fact]
    public void A_weight_for_everyone_is_too_much_for_who_is_under_18_and_just_lifts_it()
    {
        var season = Season(new Workout(All, "One", [Straight(Item("bench-press", 3, 5, new(EffortKind.Fixed, null, new Weight(57.5m))))], Progression.None));
        Assert.Equal("57.5", Plain(Of(Strong, season: season).Lines[0].Load.Made));
        // 83 % of 60 are 49.8: never above.
        Assert.Equal("47.5", Plain(Of(Minor, season: season).Lines[0].Load.Made));
    }

    [Fact]
    public void What_is_done_instead_is_new_to_who_does_it_and_no_harder_than_what_is_written()
    {
        Effort Instead(Effort written, Player player) => Assert.Single(Of(player.Reported(Without(RestrictionTag.NoAxialLoad), Monday), season: Season(new Workout(All, "One", [Straight(Item("back-squat", 3, 5, written))], Progression.None))).Lines).Prescription.Effort;
        Assert.Equal(Effort.Reserve(3), Instead(Effort.OfMax(90), Strong));
        Assert.Equal(Effort.Reserve(3), Instead(Effort.Reserve(1), Strong));
        Assert.Equal(Effort.Reserve(3), Instead(new(EffortKind.Velocity, 0.5m), Strong));
        // An easy week stays easy: five of fifteen and more that are possible.
        Assert.Equal(Effort.Reserve(6), Instead(Effort.Reserve(6), Strong));
        Assert.Equal(Effort.Reserve(5), Instead(Effort.OfMax(75), Strong));
        Assert.Equal(Effort.Reserve(10), Instead(Effort.OfMax(50), Strong));
        Assert.Equal(Effort.Free, Instead(Effort.Free, Strong));
        Assert.Equal(Effort.Reserve(3), Instead(Effort.OfMax(90), Minor));
    }

    /// <summary>What nobody can do is done otherwise by all: then nobody's work differs from the others'.</summary>
    [Fact]
    public void What_the_gym_does_not_have_is_the_same_for_everyone()
    {
        var broken = FullGym with { Racks = [.. FullGym.Racks.Select(rack => rack with { IsBroken = true })] };
        foreach (var gym in new[] { FullGym with { Racks = [] }, broken, FullGym with { Dumbbells = null, Kettlebells = null } })
        {
            var setup = Setup(gym);
            var work = Of(Strong, setup);
            Assert.Contains(work.Lines, line => line.Instead);
            Assert.All(work.Lines, line => Assert.Empty(line.Exercise.Equipment.Except(gym.AtHand)));
            Assert.False(work.IsModified);
            Assert.True(Of(Strong.Reported(Without(RestrictionTag.UpperBodyOnly), Monday), setup).IsModified);
        }
        Assert.DoesNotContain(Of(Strong, Setup(broken)).Lines, line => line.Exercise.Load == LoadedBy.Bar);
    }

    [Fact]
    public void An_exercise_of_one_s_own_that_is_gone_is_left_out_for_everyone()
    {
        var season = Season(new Workout(All, "Own", [Straight(Item("our-own", 3, 5, Effort.Free), Item("back-squat", 3, 5, Effort.OfMax(80)))], Progression.None));
        var own = ExerciseBook.Find(new("press-up"))!;
        var with = With(Setup(FullGym), new SetExercise(own with { Id = new("our-own"), Name = "Our own", Easier = null, Harder = null, MaxOf = null, MaxShare = null }));
        Assert.Equal("our-own back-squat", Exercises(Of(Strong, with, season)));
        var gone = Of(Strong, With(with, new RemoveExercise(new("our-own"))), season);
        Assert.Equal("back-squat", Exercises(gone));
        Assert.False(gone.IsModified);
    }

    [Fact]
    public void What_the_coach_wrote_for_the_week_is_what_is_done()
    {
        var week = Season(Everything).Weeks[0].Id;
        var season = Season(Everything with { Cells = [new(week, new("back-squat"), new(2, 3, WorkUnit.Repetitions, Effort.OfMax(90))), new(week, new("nordic-lower"), null)] });
        var work = Of(Strong, season: season);
        Assert.Equal("90", Plain(Line(work, "back-squat").Load.Made));
        Assert.DoesNotContain("nordic-lower", Exercises(work), StringComparison.Ordinal);
        Assert.False(work.IsModified);
    }

    [Fact]
    public void Nothing_on_the_work_can_tell_why()
    {
        var (seen, open) = (new HashSet<Type>(), new Queue<Type>([typeof(AthleteWork)]));
        while (open.TryDequeue(out var type))
        {
            if (!seen.Add(type)) continue;
            foreach (var held in type.GetProperties().Select(property => property.PropertyType).SelectMany(held => held.GetGenericArguments().Prepend(held)).Where(held => held.Namespace?.StartsWith("Seasonwright", StringComparison.Ordinal) == true)) open.Enqueue(held);
        }
        Assert.Contains(typeof(Exercise), seen);
        Assert.Empty(seen.Intersect([typeof(RestrictionTag), typeof(Restrictions), typeof(Availability), typeof(SessionFit), typeof(Standing), typeof(AvailabilityReport)]));
    }

    [Fact]
    public void Nothing_written_is_nothing_to_do() => Assert.Empty(AthleteWork.Of(Season(Everything), Setup(FullGym), AtNine with { Workout = null }, [Strong], RackLoads.Of(FullGym)));
    /// <summary>Of 60 kg at 0.9 m/s and 100 kg at 0.5 m/s: a hundredth less for each kilogram, by hand.</summary>
    [Theory]
    [InlineData("0.7", "80")]
    [InlineData("0.9", "60")]
    [InlineData("0.55", "95")]
    [InlineData("0.45", "")]
    [InlineData("0.95", "")]
    public void A_velocity_becomes_kilograms_by_the_own_profile_within_what_was_measured(string velocity, string weight)
    {
        var asked = decimal.Parse(velocity, System.Globalization.CultureInfo.InvariantCulture);
        var season = Season(new Workout(All, "Fast", [Straight(Item("back-squat", 4, 3, new Effort(EffortKind.Velocity, asked, stopLoss: new(20))))], Progression.None));
        var profiled = Strong with { Lifts = [Set(60, 0.9m), Set(100, 0.5m)] };
        Assert.Equal(weight, Plain(Line(Of(profiled, season: season), "back-squat").Load.Made));
        // Who was never measured gets the velocity alone.
        Assert.Null(Line(Of(Strong, season: season), "back-squat").Load.Made);

        static LiftTest Set(decimal load, decimal velocity) => new(new((int)load, 0, 0, new byte[8]), Strong.Id, new("back-squat"), Monday.AddDays(-7), new Weight(load), null, velocity, default);
    }

    /// <summary>120 kg would be lifted once by the trials' 0.3 m/s; for who is under 18 three repetitions are done with what six or more are possible with: textbook, 85 %, 102 kg at most.</summary>
    [Fact]
    public void The_young_lift_nothing_close_to_a_maximum_at_a_velocity_either()
    {
        var season = Season(new Workout(All, "Slow", [Straight(Item("back-squat", 4, 3, new Effort(EffortKind.Velocity, 0.35m)))], Progression.None));
        LiftTest[] sets = [.. new[] { (60m, 0.9m), (115m, 0.35m) }.Select(set => new LiftTest(new((int)set.Item1, 0, 0, new byte[8]), Strong.Id, new("back-squat"), Monday.AddDays(-7), new Weight(set.Item1), null, set.Item2, default))];
        Assert.Equal("115", Plain(Line(Of(Strong with { Lifts = [.. sets] }, season: season), "back-squat").Load.Made));
        var young = Line(Of(Minor with { Lifts = [.. sets] }, season: season), "back-squat").Load;
        Assert.True(young.Target!.Kilograms <= 0.85m * 120, $"{young.Target}");
    }
}
