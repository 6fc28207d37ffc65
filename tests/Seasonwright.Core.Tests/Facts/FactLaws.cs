using CsCheck;
using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Tests.Facts;

public class FactLaws
{
    private static readonly Gen<Key> AnyKey = Gen.Select(Gen.OneOf("frame", "match", "week.load"), Gen.OneOf("", "a", "b", "w1:power"), (facet, subject) => new Key(facet, subject));

    private static readonly Gen<object?> AnyValue = Gen.Int[0, 3].Select(number => number switch { 0 => null, 1 => "x", _ => (object?)number });

    /// <summary>Changes one after another; many touch the same places.</summary>
    private static readonly Gen<(Key Key, object? Value)[]> Writes = Gen.Select(AnyKey, AnyValue).Array[0, 10];

    private static FactSet Written(FactSet facts, (Key Key, object? Value)[] writes) => writes.Aggregate(facts, (now, write) => now.With(write.Key, write.Value));

    /// <summary>The same as a step that names a place as often as it was written.</summary>
    private static Step LongHand(FactSet facts, (Key Key, object? Value)[] writes)
    {
        var changes = new List<Change>();
        foreach (var (key, value) in writes)
        {
            changes.Add(new Change(key, facts[key], value));
            facts = facts.With(key, value);
        }
        return new Step(changes.ToValueList());
    }

    [Fact]
    public void A_step_leads_from_one_set_to_the_other_and_back() => Gen.Select(Writes, Writes).Sample((first, second) =>
    {
        var before = Written(FactSet.Empty, first);
        var after = Written(before, second);
        foreach (var step in new[] { Step.Between(before, after), LongHand(before, second) })
        {
            Assert.Equal(after, before.Evolve(step));
            Assert.Equal(before, after.Evolve(step.Inverse));
            Assert.Equal(step, step.Inverse.Inverse);
        }
        // Joined with nothing, a step stands in key order.
        Assert.Equal(Step.Between(before, after).Inverse.Then(Step.Nothing), Step.Between(after, before));
        Assert.Equal(before.Equals(after), Step.Between(before, after).IsNothing);
    }, iter: 2_000);

    [Fact]
    public void Joining_steps_is_associative_and_nothing_is_its_rest() => Gen.Select(Writes, Writes, Writes, Writes).Sample((start, one, two, three) =>
    {
        var facts = Written(FactSet.Empty, start);
        var (afterOne, afterTwo) = (Written(facts, one), Written(Written(facts, one), two));
        var (a, b, c) = (LongHand(facts, one), LongHand(afterOne, two), LongHand(afterTwo, three));
        Assert.Equal(a.Then(b).Then(c), a.Then(b.Then(c)));
        Assert.Equal(Step.Between(facts, Written(afterTwo, three)), a.Then(b).Then(c));
        Assert.Equal(a.Then(Step.Nothing), Step.Nothing.Then(a));
        Assert.Equal(Step.Nothing, a.Then(a.Inverse));
    }, iter: 2_000);

    [Fact]
    public void Facts_are_equal_when_every_place_holds_the_same() => Gen.Select(Writes, Writes).Sample((first, second) =>
    {
        var (a, b) = (Written(FactSet.Empty, first), Written(FactSet.Empty, second));
        var same = a.Keys.SequenceEqual(b.Keys) && a.Keys.All(key => Equals(a[key], b[key]));
        Assert.Equal(same, a.Equals(b));
        Assert.Equal(a, Written(FactSet.Empty, a.Keys.Reverse().Select(key => (key, a[key])).ToArray()));
        Assert.Equal(a.GetHashCode(), Written(FactSet.Empty, a.Keys.Reverse().Select(key => (key, a[key])).ToArray()).GetHashCode());
        Assert.Equal(a.Keys.Order(), a.Keys);
        Assert.Equal(a.Keys.Count(), a.Count);
    }, iter: 2_000);

    [Fact]
    public void Any_step_can_follow_any_facts() => Gen.Select(Writes, Writes, Writes).Sample((facts, elsewhere, writes) =>
    {
        var step = LongHand(Written(FactSet.Empty, elsewhere), writes);
        var after = Written(FactSet.Empty, facts).Evolve(step);
        Assert.All(step.Changes.Reverse().DistinctBy(change => change.Key), change => Assert.Equal(change.After, after[change.Key]));
    }, iter: 1_000);

    /// <summary>A past bug: a step's text held its inverse's, which held the step's, and so on.</summary>
    [Fact]
    public void A_step_can_be_read()
    {
        var step = new Step(new([new Change(new Key("week.load", "w1"), null, 5)]));
        Assert.Equal(("[week.load/w1: nothing -> 5]", "[week.load/w1: 5 -> nothing]"), (step.ToString(), step.Inverse.ToString()));
    }

    [Fact]
    public void A_write_that_changes_nothing_gives_the_same_value()
    {
        var facts = FactSet.Empty.With(new Key("match", "a"), "x");
        Assert.Same(facts, facts.With(new Key("match", "a"), "x"));
        Assert.Same(facts, facts.With(new Key("match", "b"), null));
        Assert.Equal(FactSet.Empty, facts.With(new Key("match", "a"), null));
    }
}
