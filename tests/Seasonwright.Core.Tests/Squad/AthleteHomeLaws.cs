using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>What holds for every squad, workout and home.</summary>
public class AthleteHomeLaws
{
    private static readonly Gen<Effort> Efforts = Gen.OneOf(
        Gen.Const(Effort.Free), Gen.Int[80, 420].Select(quarter => Effort.OfMax(quarter / 4m)), Gen.Int[0, 10].Select(left => Effort.Reserve(left)), Gen.Const(new Effort(EffortKind.Velocity, 0.5m)),
        Gen.Int[1, 150].Select(percent => new Effort(EffortKind.OfBodyMass, percent)), Gen.Int[1, 120].Select(amount => new Effort(EffortKind.Fixed, null, new Weight(amount))));

    private static readonly Gen<Progression> Ways = Gen.Select(Gen.Enum<ProgressionKind>(), Gen.Int[0, 20], Gen.Int[0, 2], Gen.Int[0, 2], (kind, percent, fewer, sets) => new Progression(kind, percent / 2m, fewer, sets));

    private static readonly Gen<Workout> Workouts = Gen.Select(Gen.Select(Gen.OneOf(ExerciseBook.All.ToArray()), Gen.Int[1, 5], Gen.Int[1, 15], Efforts, Gen.Enum<WorkUnit>(),
        (exercise, sets, amount, effort, unit) => new WorkoutItem(new(exercise.Id.Text), exercise.Id, new(sets, amount, unit, effort))).List[1, 5], Ways,
        (items, way) => new Workout(All, "Drawn", [.. items.DistinctBy(item => item.Id).Select(item => Straight(item))], way));

    private static readonly Gen<HomeRun> Runs = Gen.Select(Gen.Int[1, 12], Gen.Int[20, 600], Gen.Bool, Gen.Int[50, 120], Gen.Int[0, 20], (repetitions, amount, isMetres, speed, more) =>
        new HomeRun(repetitions, amount, isMetres ? WorkUnit.Metres : WorkUnit.Seconds, new Percent(speed), 60, more));

    private static readonly Gen<HomeProgramme> Programmes = Gen.Select(Gen.Int[1, 6], Gen.Enum<Equipment>().List[0, 12], Gen.Int[0, 40], Runs, Gen.Int[-3, 12], (weeks, equipment, heaviest, run, from) =>
        new HomeProgramme(new("h"), "Drawn", Monday.AddDays(from), weeks, new([.. equipment.Distinct()], heaviest < 4 ? null : new(2, heaviest, 2, MassUnit.Kilogram)),
            [new(DayOfWeek.Monday, All), new(DayOfWeek.Thursday, All, run), new(DayOfWeek.Saturday, null, run)]));

    private static readonly Gen<Player> Players = Gen.Select(AnySquad.AnyAvailability, Gen.Int[15, 30], Gen.Int[20, 160], Gen.Int[0, 3], Gen.Int[200, 900], (availability, age, maximum, known, seconds) =>
        Strong.Born(Monday.AddYears(-age)).Reported(availability, Monday.AddDays(-9)) with
        {
            Lifts = known == 0 ? [] : [.. ExerciseBook.All.Where((_, at) => at % known == 0).Select(exercise => new LiftTest(Guid.Empty, Strong.Id, exercise.Id, Monday.AddDays(-7), new Weight(maximum), 1, null, default))],
            Runs = known == 1 ? [] : [new(Guid.Empty, Strong.Id, Monday.AddDays(-7), 1_500, seconds, default)],
        });

    [Fact]
    public void Nobody_gets_what_is_ruled_out_what_the_home_lacks_or_what_is_too_hard_alone()
    {
        var (lines, kilos, minors, more) = (0, 0, 0, 0);
        Gen.Select(Workouts, Programmes, Players).Sample((workout, programme, player) =>
        {
            var restrictions = player.StandingOn(Monday).Availability.Restrictions;
            var home = Home.AtHome(player, programme, workout);
            foreach (var (line, upTo) in home.Days.SelectMany(day => day.Lines))
            {
                lines++;
                Assert.Empty(restrictions.RulingOut(line.Exercise));
                Assert.Empty(line.Exercise.Equipment.Except(programme.Kit.AtHand));
                var (effort, least) = (line.Prescription.Effort, home.IsMinor ? 6 : 5);
                if (home.IsMinor) minors++;
                if (effort.Kind == EffortKind.Reserve) Assert.True(effort.Amount >= 2, $"{effort.Amount} left");
                if (upTo is { } most)
                {
                    more++;
                    Assert.True(most >= line.Prescription.Amount && line.Prescription.Unit == WorkUnit.Repetitions);
                }
                if (line.Load.Made is null) { Assert.Contains(effort.Kind, new[] { EffortKind.Free, EffortKind.Reserve }); continue; }
                kilos++;
                Assert.True(line.Load.Made.Weight.Kilograms <= line.Load.Target!.Kilograms);
                // The maximum it is a share of, and how often that share can be lifted by the table.
                var maximum = player.MaximumOn(Monday.AddDays(100), line.Exercise, Setup(FullGym))?.Weight.Kilograms;
                if (!line.Exercise.HasMax || line.Prescription.Unit != WorkUnit.Repetitions) continue;
                // Whoever was never tested gets no weight, however it is written.
                Assert.NotNull(maximum);
                Assert.True(line.Load.Made.Weight.Kilograms <= maximum * RepTable.Textbook.Percent(least) / 100 + 0.001m, $"{line.Load.Made.Weight} of {maximum}");
            }
        }, iter: 400, threads: 1);
        Assert.True(lines > 2_000 && kilos > 50 && minors > 200 && more > 100, $"{lines} {kilos} {minors} {more}");
    }

    [Fact]
    public void Every_day_is_there_once_and_a_run_is_no_faster_than_written()
    {
        var own = 0;
        Gen.Select(Workouts, Programmes, Players).Sample((workout, programme, player) =>
        {
            var home = Home.AtHome(player, programme, workout);
            Assert.Equal(home.AsksFirst ? 0 : 7 * programme.Weeks, home.Days.Count);
            foreach (var run in home.Days.Select(day => day.Run).OfType<AthleteRun>())
            {
                Assert.False(run.IsOwnSpeed && home.Test is null);
                if (!run.IsOwnSpeed) continue;
                own++;
                var asked = home.Test!.Speed * run.Run.Speed.Value / 100;
                // Distances are told to 10 m, below 400 m to 5 m, times to seconds.
                var (metres, seconds) = run.Run.Unit == WorkUnit.Metres ? (0m, 0.5m) : (run.Metres < 400 ? 2.5m : 5m, 0m);
                Assert.True(Math.Abs(run.Metres!.Value - asked * run.Seconds!.Value) <= metres + seconds * asked + 0.001m, $"{run.Metres} m in {run.Seconds} s at {asked}");
            }
        }, iter: 300, threads: 1);
        Assert.True(own > 100, $"{own}");
    }

    [Fact]
    public void A_run_never_gets_less_over_the_weeks() => Runs.Sample(run =>
    {
        for (var week = 1; week < HomeProgramme.MostWeeks; week++)
        {
            var (was, now) = (run.In(week - 1), run.In(week));
            Assert.True(now.Repetitions * now.Amount >= was.Repetitions * was.Amount);
            Assert.True(now.Repetitions <= HomeRun.MostRepetitions && now.Speed == run.Speed && now.Rest == run.Rest);
        }
        Assert.Equal(run, run.In(0));
    });
}
