using CsCheck;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire.Tests;

/// <summary>Whatever can be written reads back equal, and is written the same again.</summary>
public class RoundTripLaws
{
    [Fact]
    public void Of_edits()
    {
        var kinds = EditNames.All.Values.OrderBy(type => type.Name, StringComparer.Ordinal).ToArray();
        Gen.Select(Gen.Int[0, kinds.Length - 1], Gen.Int).Sample((kind, seed) =>
        {
            var edit = (Edit)new Arbitrary(seed).Value(kinds[kind]);
            var text = LogText.Of(edit);
            var read = LogText.ReadEdit(text);
            return edit.Equals(read) && LogText.Of(read!) == text && !text.Contains('\n') && LogText.Is<Publish>(text) == edit is Publish;
        }, iter: 3000);
    }

    [Fact]
    public void Of_steps() => Gen.Int.Sample(seed =>
    {
        var arbitrary = new Arbitrary(seed);
        var step = Step.Between(arbitrary.Facts(), arbitrary.Facts());
        var read = LogText.ReadStep(LogText.Of(step));
        return step.Equals(read) && LogText.Of(read) == LogText.Of(step);
    }, iter: 500);

    [Fact]
    public void Of_facts() => Gen.Int.Sample(seed =>
    {
        var facts = new Arbitrary(seed).Facts();
        var read = LogText.TryReadFacts(LogText.Of(facts));
        return facts.Equals(read) && LogText.Of(read) == LogText.Of(facts) && FactHash.Of(read) == FactHash.Of(facts);
    }, iter: 500);
}
