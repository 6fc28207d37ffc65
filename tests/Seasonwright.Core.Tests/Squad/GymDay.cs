using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Strength;
using Seasonwright.Core.Tests.Drawn;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Core.Tests.Squad;

/// <summary>A session in the gym on the second day of a season, who does it and with what.</summary>
internal static class GymDay
{
    public static readonly DateOnly Monday = Plans.Monday;

    public static readonly WorkoutId All = new("all");

    public static readonly Session AtNine = new(new("gym"), Monday.AddDays(1), DaySlot.Morning, SessionKind.UpperStrength, new Minutes(60), new Rpe(7m), Start: new(9, 0), Workout: All);

    /// <summary>Both halves of the body, all kinds of weight.</summary>
    public static readonly Workout Everything = new(All, "All",
    [
        new(PartKind.WarmUp, [Item("goblet-squat", 2, 8, Effort.Free)], 30),
        Straight(Item("back-squat", 4, 5, Effort.OfMax(80))),
        new(PartKind.Superset, [Item("trap-bar-deadlift", 3, 4, Effort.OfMax(80)), Item("nordic-lower", 2, 4, Effort.Free)], 120),
        new(PartKind.Superset, [Item("bench-press", 3, 5, Effort.Reserve(2)), Item("pull-up", 3, 5, Effort.OfMax(90))], 120),
        Straight(Item("overhead-press", 3, 6, Effort.Reserve(3))),
        Straight(Item("countermovement-jump", 3, 4, Effort.Free)),
    ], Progression.None);

    /// <summary>70 kg; of the lifts that hang on the body 100 kg together.</summary>
    public static readonly Player Strong = AnyPlayer.Ida with
    {
        Weighings = [new(Guid.Empty, AnyPlayer.Ida.Id, Monday.AddDays(-7), new(70, BodyMassUnit.Kilogram), default)],
        Lifts = [.. new[] { ("back-squat", 100m), ("bench-press", 60m), ("trap-bar-deadlift", 120m), ("pull-up", 100m), ("overhead-press", 40m) }
            .Select((lift, at) => new LiftTest(new(at, 0, 0, new byte[8]), AnyPlayer.Ida.Id, new(lift.Item1), Monday.AddDays(-7), new Weight(lift.Item2), 1, null, default))],
    };

    public static readonly Player Minor = Strong.Born(Monday.AddYears(-17));

    public static readonly Gym FullGym = Gym.Usual(MassUnit.Kilogram);

    public static WorkoutItem Item(string exercise, int sets, int amount, Effort effort) => new(new(exercise), new(exercise), new(sets, amount, WorkUnit.Repetitions, effort));

    public static WorkoutPart Straight(params WorkoutItem[] items) => new(PartKind.Straight, [.. items], 150);

    public static Season Season(Workout workout, params SeasonEdit[] more) => History.After(
        [new StartSeason(Monday, DayOfWeek.Monday, new(Enumerable.Range(1, 3).Select(n => new WeekId($"w{n}"))), new("Harbour Vale")), new SetWorkout(workout), new SetSession(AtNine), .. more]);

    public static Setup Setup(Gym gym) => With(Core.Setups.Setup.Empty(AnyPlayer.Team), new SetGym(gym));

    public static Setup With(Setup setup, SetupEdit edit) => setup.With(Assert.IsType<Accepted>(Decider.Decide(setup, edit)).Step);

    public static ValueList<AthleteWork> AllOf(Player player, Season? season = null, Setup? setup = null)
    {
        var (mine, team) = (season ?? Season(Everything), setup ?? Setup(FullGym));
        return AthleteWork.Of(mine, team, mine.Sessions.Single(session => session.Id == AtNine.Id), [player], RackLoads.Of(team.Gym));
    }

    public static AthleteWork Of(Player player, Setup? setup = null, Season? season = null) => Assert.Single(AllOf(player, season, setup));

    public static WorkLine Line(AthleteWork work, string item) => work.Lines.Single(line => line.Item.Id.Text == item);

    public static string Exercises(AthleteWork work) => string.Join(' ', work.Lines.Select(line => line.Exercise.Id.Text));

    public static string Plain(MadeWeight? made) => FormattableString.Invariant($"{made?.Weight.Amount:0.###}");
}
