using Seasonwright.Core.Boards;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Core.Tests.Squad;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Boards;

/// <summary>A squad of any size in a gym of any number of racks.</summary>
internal static class BoardDay
{
    /// <summary>A at a rack, B with dumbbells and on the floor.</summary>
    public static readonly Workout TwoParts = new(All, "Two parts", [Straight(Item("back-squat", 4, 5, Effort.OfMax(80))), Straight(Item("rear-foot-split-squat", 3, 8, Effort.Reserve(2)), Item("nordic-lower", 3, 4, Effort.Free))], Progression.None);

    /// <summary>p0 lifts most: 140 kg, the next ones 2 kg less each.</summary>
    public static Player Lifter(int number) => AnyPlayer.Of(FormattableString.Invariant($"p{number}"), FormattableString.Invariant($"Family{number:00}"), "Ann") is var player ? player with
    {
        Lifts = [new LiftTest(new(number + 1, 0, 0, new byte[8]), player.Id, new("back-squat"), Monday.AddDays(-7), new Weight(140 - 2 * number), 1, null, default)],
    } : throw new InvalidOperationException();

    public static List<Player> Lifters(int count) => [.. Enumerable.Range(0, count).Select(Lifter)];

    public static Gym Racks(int count) => FullGym with { Racks = [.. Enumerable.Range(1, count).Select(number => GymRack.Usual(MassUnit.Kilogram) with { Name = FormattableString.Invariant($"{number}"), Bar = new Weight(number % 2 == 0 ? 15 : 20) })] };

    public static BoardSheet Sheet(IReadOnlyList<Player> squad, Gym gym, Workout? workout = null) => BoardSheet.Of(Season(workout ?? TwoParts), Setup(gym), AtNine, squad)!;

    public static BoardState State(params BoardMark[] marks) => BoardState.Of(marks);

    public static DateTimeOffset At(int minute) => new(2027, 8, 3, 9, minute, 0, TimeSpan.Zero);

    public static Guid Id(int number) => new(number, 1, 0, new byte[8]);
}
