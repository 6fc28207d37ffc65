using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

public class UndoLaws
{
    [Fact]
    public void The_last_gesture_is_taken_back_whole_and_that_can_be_taken_back_too() => Gen.Select(AnySeason.History, Gen.Int[1, 6]).Sample((history, count) =>
    {
        var gesture = history.Steps.TakeLast(count).ToList();
        var before = history.Steps.SkipLast(count).Aggregate(FactSet.Empty, (facts, step) => facts.Evolve(step));
        var undo = Undo.Of(history.Season.Facts, gesture, out var overtaken);
        Assert.Null(overtaken);
        var undone = history.Season.Facts.Evolve(undo!);
        Assert.Equal(before, undone);
        Assert.Equal(history.Season.Facts, undone.Evolve(Undo.Of(undone, [undo!], out _)!));
    }, iter: 300);

    [Fact]
    public void An_older_gesture_is_taken_back_unless_a_later_change_stands_on_it()
    {
        var (undone, refused) = (0, 0);
        Gen.Select(AnySeason.History, Gen.Int[0, 40], Gen.Int[1, 3]).Sample((history, from, count) =>
        {
            var gesture = history.Steps.Skip(from).Take(count).ToList();
            var later = history.Steps.Skip(from + count).SelectMany(step => step.Changes).Select(change => change.Key).ToHashSet();
            var before = history.Steps.Take(from).Aggregate(FactSet.Empty, (facts, step) => facts.Evolve(step));
            var now = history.Season.Facts;
            var places = gesture.SelectMany(step => step.Changes).Select(change => change.Key).ToHashSet();
            if (Undo.Of(now, gesture, out var overtaken) is { } undo)
            {
                Interlocked.Increment(ref undone);
                var after = now.Evolve(undo);
                // Only what the gesture left different is touched, and it is as it was.
                Assert.All(undo.Changes, change => Assert.Contains(change.Key, places));
                Assert.All(undo.Changes, change => Assert.Equal(before[change.Key], after[change.Key]));
                Assert.All(now.Keys.Except(undo.Changes.Select(change => change.Key)), key => Assert.Equal(now[key], after[key]));
            }
            else
            {
                Interlocked.Increment(ref refused);
                Assert.Contains(overtaken!.Value, places);
                Assert.Contains(overtaken.Value, later);
            }
        }, iter: 500);
        Assert.True(undone > 0 && refused > 0, $"{undone} undone, {refused} refused");
    }

    [Fact]
    public void A_gesture_that_ended_where_it_began_leaves_nothing_to_undo()
    {
        var step = new Step(new([new Change(new Key("match", "a"), null, "x")]));
        Assert.Equal(Step.Nothing, Undo.Of(FactSet.Empty, [step, step.Inverse], out var overtaken));
        Assert.Null(overtaken);
    }
}
