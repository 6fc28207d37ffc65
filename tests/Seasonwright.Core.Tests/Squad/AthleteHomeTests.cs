using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using static Seasonwright.Core.Tests.Squad.GymDay;
using static Seasonwright.Core.Tests.Squad.Home;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What one player does at home, by example.</summary>
public class AthleteHomeTests
{
    [Fact]
    public void Every_day_is_told_and_what_is_not_written_is_free()
    {
        var home = AtHome(Runner);
        Assert.Equal(Break.Span().Days(), home.Days.Select(day => day.Day));
        Assert.Equal("1111111 2222222", string.Join(' ', home.Days.GroupBy(day => day.Week).Select(week => string.Concat(week.Select(day => day.Week)))));
        Assert.All(home.Days, day => Assert.Equal(day.Day.DayOfWeek is not (DayOfWeek.Monday or DayOfWeek.Wednesday or DayOfWeek.Friday), day.IsFree));
    }

    [Fact]
    public void What_the_home_lacks_is_done_with_what_it_has()
    {
        var home = AtHome(Runner);
        Assert.All(home.In(1).SelectMany(day => day.Lines), line => Assert.Empty(line.Work.Exercise.Equipment.Except(Usual.AtHand)));
        Assert.NotEqual(new ExerciseId("back-squat"), Line(home, "back-squat").Work.Exercise.Id);
        // The same for everybody, so that nobody is "modified" by it.
        Assert.False(home.IsModified);
        Assert.All(home.In(1).SelectMany(day => day.Lines), line => Assert.False(line.Work.Instead));
        Assert.Empty(AthleteHome.LeftOut(Break, Season(Everything), Setup(FullGym)));
    }

    [Fact]
    public void What_nothing_at_home_comes_near_to_is_said_to_be_left_out()
    {
        var sled = Everything with { Parts = [.. Everything.Parts, Straight(Item("pull-up", 3, 5, Effort.Reserve(2)) with { Id = new("more") })] };
        var nothing = Break with { Kit = HomeKit.Nothing };
        var left = AthleteHome.LeftOut(nothing, Season(sled, new SetHomeProgramme(nothing)), Setup(FullGym));
        var done = AtHome(Runner, nothing, sled).In(1).SelectMany(day => day.Lines).Select(line => line.Work.Item.Exercise).ToHashSet();
        Assert.All(sled.Items, item => Assert.NotEqual(done.Contains(item.Exercise), left.Any(exercise => exercise.Id == item.Exercise)));
    }

    /// <summary>Six in reserve of a 60 kg maximum would be two dumbbells of the home; where the heaviest is too light more repetitions are done.</summary>
    [Fact]
    public void Kilos_are_told_where_a_maximum_and_the_weights_are_known()
    {
        var press = Everything with { Parts = [Straight(Item("dumbbell-bench-press", 3, 8, Effort.OfMax(65)), Item("dumbbell-row", 3, 8, Effort.OfMax(70)))] };
        var kit = Break with { Kit = new([Equipment.Bench], new(2, 16, 2, MassUnit.Kilogram)) };
        var player = Runner with { Lifts = [new(Guid.Empty, Runner.Id, new("dumbbell-bench-press"), Monday.AddDays(-7), new Weight(24), 1, null, default), new(Guid.Empty, Runner.Id, new("dumbbell-row"), Monday.AddDays(-7), new Weight(40), 1, null, default)] };
        var home = AtHome(player, kit, press);
        // 65 % of 24 kg is 15.6 kg: never above, 14 kg, which comes near enough.
        Assert.Equal(("14", null), (Plain(Line(home, "dumbbell-bench-press").Work.Load.Made), Line(home, "dumbbell-bench-press").UpTo));
        // 70 % of 40 kg is 28 kg and the heaviest is 16 kg.
        Assert.Equal(("16", (int?)20), (Plain(Line(home, "dumbbell-row").Work.Load.Made), Line(home, "dumbbell-row").UpTo));
        // Nobody knows how heavy the dumbbells are.
        var unknown = Line(AtHome(player, kit with { Kit = new([Equipment.Bench, Equipment.Dumbbells]) }, press), "dumbbell-bench-press").Work;
        Assert.Null(unknown.Load.Made);
        Assert.Equal(EffortKind.Reserve, unknown.Prescription.Effort.Kind);
        // Nobody tested her.
        Assert.Null(Line(AtHome(player with { Lifts = [] }, kit, press), "dumbbell-bench-press").Work.Load.Target);
    }

    [Fact]
    public void Nobody_lifts_close_to_a_maximum_alone_and_the_young_less_so()
    {
        var heavy = Everything with { Parts = [Straight(Item("dumbbell-row", 3, 3, Effort.OfMax(95)), Item("press-up", 3, 10, Effort.Reserve(0)))] };
        var kit = Break with { Kit = new([Equipment.Bench], new(2, 60, 1, MassUnit.Kilogram)) };
        Player With(Player player) => player with { Lifts = [new(Guid.Empty, player.Id, new("dumbbell-row"), Monday.AddDays(-7), new Weight(50), 1, null, default)] };
        // Five possible are 87 % in the textbook's table, six 85 %.
        Assert.Equal("43", Plain(Line(AtHome(With(Runner), kit, heavy), "dumbbell-row").Work.Load.Made));
        Assert.Equal("42", Plain(Line(AtHome(With(Minor), kit, heavy), "dumbbell-row").Work.Load.Made));
        Assert.Equal(2, Line(AtHome(Runner, kit, heavy), "press-up").Work.Load.Reserve);
        Assert.True(AtHome(With(Minor), kit, heavy).IsMinor);
    }

    [Fact]
    public void Runs_are_made_of_the_own_test_and_grow()
    {
        var home = AtHome(Runner);
        // 70 % of 4 m/s is 2.8 m/s: 1,500 s are 4,200 m; ten per cent more are 1,650 s and 4,620 m.
        Assert.Equal((4_200, 1_500, true), Told(home, 1, DayOfWeek.Wednesday));
        Assert.Equal((4_620, 1_650, true), Told(home, 2, DayOfWeek.Wednesday));
        // 95 % is 3.8 m/s: 300 m in 79 s; a fifth more of six is seven.
        Assert.Equal((300, 79, true), Told(home, 1, DayOfWeek.Friday));
        Assert.Equal((6, 7), (Day(home, 1, DayOfWeek.Friday).Run!.Run.Repetitions, Day(home, 2, DayOfWeek.Friday).Run!.Run.Repetitions));
    }

    [Fact]
    public void Without_a_test_no_speed_is_made_up()
    {
        var home = AtHome(Strong);
        Assert.Equal((null, 1_500, false), Told(home, 1, DayOfWeek.Wednesday));
        Assert.Equal((300, null, false), Told(home, 1, DayOfWeek.Friday));
        Assert.Equal((3m, 8m), (Steady.Rpe.Value, Intervals.Rpe.Value));
        // One that was run after the first day does not tell yet.
        Assert.Null(AtHome(Strong with { Runs = [Runner.Runs[0] with { Day = Monday.AddDays(1) }] }).Test);
    }

    [Fact]
    public void Without_room_to_run_something_else_is_done()
    {
        var run = Day(AtHome(Runner, Break with { Kit = new([Equipment.Bike]) }), 1, DayOfWeek.Wednesday).Run!;
        Assert.Equal(new ExerciseId("easy-bike"), run.Exercise.Id);
        Assert.Equal(new ExerciseId("brisk-walk"), Day(AtHome(Runner, Break with { Kit = HomeKit.Nothing }), 1, DayOfWeek.Friday).Run!.Exercise.Id);
        Assert.Equal((null, 1_500, false, false), (run.Metres, run.Seconds, run.IsOwnSpeed, run.Instead));
    }

    [Fact]
    public void Who_is_out_or_to_be_asked_gets_no_work()
    {
        foreach (var availability in new[] { Availability.Out, Availability.Modified(Restrictions.None) })
        {
            var home = AtHome(Runner.Reported(availability, Monday.AddDays(-1)));
            Assert.True(home is { AsksFirst: true, IsModified: true, Days.Count: 0 });
            // Also where it begins in its second week: nobody will print it anew in time.
            Assert.True(AtHome(Runner.Reported(availability, Monday.AddDays(10))).AsksFirst);
        }
        Assert.False(AtHome(Runner.Reported(Availability.Out, Monday.AddDays(14))).AsksFirst);
    }

    [Fact]
    public void What_a_restriction_rules_out_is_not_done_and_nothing_says_why()
    {
        var home = AtHome(Runner.Reported(Availability.Modified(new([RestrictionTag.UpperBodyOnly], new Minutes(30))), Monday.AddDays(-1)));
        Assert.True(home is { IsModified: true, AsksFirst: false, MostMinutes.Value: 30 });
        Assert.All(home.Days.SelectMany(day => day.Lines), line => Assert.DoesNotContain(Demand.Legs, line.Work.Exercise.Demands));
        Assert.All(home.Days, day => Assert.DoesNotContain(Demand.Legs, day.Run?.Exercise.Demands ?? []));
        Assert.False(AtHome(Runner).IsModified);
    }

    [Fact]
    public void Who_is_with_somebody_else_does_nothing_of_it()
    {
        var home = AtHome(Runner.AwayFor(AbsenceKind.NationalTeam, new DaySpan(Monday, Monday.AddDays(6))));
        Assert.All(home.In(1), day => Assert.True(day.Lines.Count == 0 && day.Run is null));
        Assert.Equal([DayOfWeek.Monday, DayOfWeek.Wednesday, DayOfWeek.Friday], home.In(1).Where(day => day.IsAway).Select(day => day.Day.DayOfWeek));
        Assert.NotEmpty(Day(home, 2, DayOfWeek.Monday).Lines);
    }

    [Fact]
    public void It_is_for_whom_it_names()
    {
        var season = Season(Everything, new SetGroup(new GroupLine(new("r"), "Rookies")));
        var rookie = Runner with { Groups = [new(Runner.Id, season.Id, new("r"), Monday, null)], Grouped = [season.Id] };
        var other = Runner with { Grouped = [season.Id] };
        bool IsFor(HomeProgramme programme, Player player) => AthleteHome.IsFor(programme, player, season, AnyPlayer.Team);
        Assert.True(IsFor(Break, other));
        Assert.False(IsFor(Break, other with { Memberships = [new(other.Id, AnyPlayer.Team, Monday.AddYears(-1), Monday.AddDays(-1), LeadingDays.None)] }));
        Assert.False(IsFor(Break, other with { Memberships = [other.Memberships[0] with { Squad = "Second team" }] }));
        var rookies = Break with { Groups = [new("r")] };
        Assert.Equal((true, false), (IsFor(rookies, rookie), IsFor(rookies, other)));
        // Nobody told who is in which group.
        Assert.True(IsFor(rookies, Runner));
        Assert.True(IsFor(rookies with { People = [other.Id] }, other));
        Assert.False(IsFor(Break with { People = [new("somebody")] }, other));
    }

    [Fact]
    public void A_workout_that_is_done_at_home_stays()
    {
        var season = Season(Everything, new SetHomeProgramme(Break));
        Assert.Equal("workout-at-home", Assert.Single(Assert.IsType<Refused>(Decider.Decide(season, new RemoveWorkout(All))).Reasons).Id);
    }

    private static (int?, int?, bool) Told(AthleteHome home, int week, DayOfWeek day) => Day(home, week, day).Run is { } run ? (run.Metres, run.Seconds, run.IsOwnSpeed) : default;

    /// <summary>What was ruled out does not come back under another name; a walk is a walk.</summary>
    [Fact]
    public void What_stands_for_a_run_is_easier_than_the_run()
    {
        var fast = Break with { Days = [new(DayOfWeek.Friday, null, new HomeRun(6, 300, WorkUnit.Metres, new Percent(110), 90))] };
        var own = Day(AtHome(Runner, fast), 1, DayOfWeek.Friday).Run!;
        var held = Day(AtHome(Runner.Reported(Availability.Modified(new([RestrictionTag.NoSprint])), Monday), fast), 1, DayOfWeek.Friday).Run!;
        // 300 m at 4.4 m/s; at 3.6 m/s that takes 83 s.
        Assert.Equal((110, 68, 90, 83), (own.Run.Speed.Value, own.Seconds, held.Run.Speed.Value, held.Seconds));
        Assert.True(held.Run.Rpe.Value <= 6 && held.Exercise.Id != own.Exercise.Id, $"{held}");
        Assert.Equal(new Rpe(3), Day(AtHome(Runner, fast with { Kit = HomeKit.Nothing }), 1, DayOfWeek.Friday).Run!.Run.Rpe);
    }

    [Fact]
    public void Nobody_young_runs_faster_than_the_own_test() =>
        Assert.Equal(100, Day(AtHome(Runner.Born(Monday.AddYears(-16)), Break with { Days = [new(DayOfWeek.Friday, null, new HomeRun(6, 300, WorkUnit.Metres, new Percent(110), 90))] }), 1, DayOfWeek.Friday).Run!.Run.Speed.Value);

    /// <summary>A weight for everyone is none for who was never tested, alone.</summary>
    [Fact]
    public void Who_was_never_tested_gets_no_weight_however_it_is_written()
    {
        var workout = new Workout(All, "Forty", [Straight(Item("dumbbell-bench-press", 4, 2, new Effort(EffortKind.Fixed, null, new Weight(40))), Item("goblet-squat", 3, 8, new Effort(EffortKind.OfBodyMass, 60)))], Progression.None);
        var kit = new HomeKit([Equipment.Bench], new(2, 40, 2, MassUnit.Kilogram));
        foreach (var line in AtHome(AnyPlayer.Ida.Born(Monday.AddYears(-17)), Break with { Kit = kit }, workout).In(1).SelectMany(day => day.Lines))
        {
            Assert.Null(line.Work.Load.Made);
            Assert.True(line.Work.Prescription.Effort is { Kind: EffortKind.Reserve, Amount: >= 2 }, $"{line}");
        }
    }

    [Theory]
    [InlineData(AbsenceKind.Holiday, true)]
    [InlineData(AbsenceKind.School, true)]
    [InlineData(AbsenceKind.NationalTeam, false)]
    [InlineData(AbsenceKind.SecondClub, false)]
    public void Who_is_on_holiday_trains_at_home_and_who_is_with_another_team_does_not(AbsenceKind kind, bool trains) =>
        Assert.Equal(trains, AtHome(Runner.AwayFor(kind, Break.Span())).Days.Any(day => day.Lines.Count > 0));
}
