using CsCheck;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using static Seasonwright.Core.Tests.Boards.BoardDay;

namespace Seasonwright.Core.Tests.Boards;

/// <summary>A board that was cut off sends what it has whenever it can, in any order and as often as it likes.</summary>
public class BoardStateLaws
{
    private static readonly Gen<PersonId> People = Gen.Int[1, 3].Select(number => new PersonId(FormattableString.Invariant($"p{number}")));

    private static readonly Gen<WorkoutItemId> Items = Gen.OneOf("a", "b").Select(id => new WorkoutItemId(id));

    private static readonly Gen<string> Racks = Gen.OneOf("1", "2");

    /// <summary>Many in one minute, so that the same instant has more than one.</summary>
    private static readonly Gen<BoardMark> Marks = Gen.Select(Gen.Int[1, 10_000].Select(Id), Gen.Int[0, 8].Select(At)).SelectMany(head => Gen.OneOf<BoardMark>(
        Gen.Select(People, Gen.Enum<Attendance>(), (who, how) => (BoardMark)new CameMark(head.Item1, head.Item2, who, how)),
        Gen.Select(People, Items, Gen.Int[1, 2], Gen.Enum<SetHow>(), Gen.Int[40, 60], (who, item, set, how, weight) => (BoardMark)new SetMark(head.Item1, head.Item2, who, item, set, how, new("back-squat"), new Weight(weight), 5, 2)),
        Gen.Select(People, Items, Gen.OneOf("box-squat", "leg-press", ""), (who, item, other) => (BoardMark)new SwapMark(head.Item1, head.Item2, who, item, other.Length == 0 ? null : new ExerciseId(other))),
        Gen.Select(Racks, Gen.Bool, (rack, isOut) => (BoardMark)new RackMark(head.Item1, head.Item2, rack, isOut)),
        Gen.Select(People, Racks, Gen.Enum<SquadHalf>(), (who, rack, half) => (BoardMark)new StandMark(head.Item1, head.Item2, who, rack, half)),
        Gen.Enum<FloorWayKind>().Select(way => (BoardMark)new WayMark(head.Item1, head.Item2, way)),
        Gen.Bool.Select(running => (BoardMark)new StartMark(head.Item1, head.Item2, running))));

    [Fact]
    public void Order_and_repetition_change_nothing() => Gen.Select(Marks.Array[0, 40].Select(marks => marks.DistinctBy(mark => mark.Id).ToArray()), Gen.Int[0, 1_000]).Sample((marks, seed) =>
    {
        var sent = marks.Concat(marks.Take(5)).ToArray();
        new Random(seed).Shuffle(sent);
        Assert.Equal(Told(BoardState.Of(marks)), Told(BoardState.Of(sent)));
    }, iter: 500, threads: 1);

    /// <summary>What was tapped last holds, and of nothing else anything changes.</summary>
    [Fact]
    public void A_later_mark_changes_what_it_is_about_and_nothing_else() => Gen.Select(Marks.Array[0, 40], People).Sample((marks, who) =>
    {
        var (before, after) = (BoardState.Of(marks), BoardState.Of([.. marks, new CameMark(Id(20_000), At(30), who, Attendance.Late)]));
        Assert.Equal(Attendance.Late, after.Of(who));
        Assert.Equal(Told(before with { Came = before.Came.SetItem(who, Attendance.Late) }), Told(after));
    }, iter: 300, threads: 1);

    [Fact]
    public void What_is_taken_back_is_open_again()
    {
        var (who, item) = (new PersonId("p1"), new WorkoutItemId("a"));
        var done = new SetMark(Id(1), At(1), who, item, 1, SetHow.AsWritten, new("back-squat"), new Weight(80), 5);
        Assert.Same(done, State(done).Sets[(who, item, 1)]);
        Assert.Empty(State(done, done with { Id = Id(2), At = At(2), How = SetHow.Open }).Sets);
        Assert.Empty(State(new SwapMark(Id(1), At(1), who, item, new("box-squat")), new SwapMark(Id(2), At(2), who, item, null)).Swaps);
        Assert.Null(State(new StartMark(Id(1), At(1), true), new StartMark(Id(2), At(2), false)).Started);
        // A clock that was stopped by mistake goes on from where it began.
        Assert.Equal(At(1), State(new StartMark(Id(1), At(1), true), new StartMark(Id(2), At(9), false), new StartMark(Id(3), At(10), true, At(1))).Started);
    }

    [Theory]
    [InlineData(0, 5, 2, "mark.set")]
    [InlineData(21, 5, 2, "mark.set")]
    [InlineData(1, -1, 2, "mark.amount")]
    [InlineData(1, 20_001, 2, "mark.amount")]
    [InlineData(1, 5, 7, "mark.left")]
    [InlineData(1, 5, -1, "mark.left")]
    public void What_cannot_be_is_refused_in_a_sentence(int set, int amount, int left, string field)
    {
        var wrong = Assert.Single(new SetMark(Id(1), At(1), new("p1"), new("a"), set, SetHow.Otherwise, new("back-squat"), null, amount, left).Wrong);
        Assert.Equal(("workout-number", field), (wrong.Id, wrong.Subject));
    }

    private static string Told(BoardState state) => string.Join('|',
        string.Join(' ', state.Came.OrderBy(one => one.Key.Text, StringComparer.Ordinal)), string.Join(' ', state.Sets.Values.OrderBy(one => (one.Person.Text, one.Item.Text, one.Set))),
        string.Join(' ', state.Swaps.OrderBy(one => (one.Key.Person.Text, one.Key.Item.Text))), string.Join(' ', state.Out.Order(StringComparer.Ordinal)),
        string.Join(' ', state.Stands.Values.OrderBy(one => one.Person.Text, StringComparer.Ordinal)), state.Way, state.Started);
}
