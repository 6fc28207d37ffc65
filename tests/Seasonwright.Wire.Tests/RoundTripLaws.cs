using CsCheck;
using Seasonwright.Core;
using Seasonwright.Core.Boards;
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
    public void Of_what_is_tapped_at_the_board()
    {
        var kinds = typeof(BoardMark).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(BoardMark))).OrderBy(type => type.Name, StringComparer.Ordinal).ToArray();
        Gen.Select(Gen.Int[0, kinds.Length - 1], Gen.Int).Sample((kind, seed) =>
        {
            var mark = (BoardMark)new Arbitrary(seed).Value(kinds[kind]);
            var read = Assert.Single(BoardText.TryReadList($"[{BoardText.Of(mark)}]")!);
            return mark.Equals(read) && read is not null && mark.Equals(BoardText.TryRead(BoardText.Of(read)));
        }, iter: 500);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    public void What_is_no_list_is_none(string json) => Assert.Null(BoardText.TryReadList(json));

    [Theory]
    [InlineData("[null]")]
    [InlineData("[{}]")]
    [InlineData("""[{"mark":"came"}]""")]
    [InlineData("""[{"mark":"went","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00Z"}]""")]
    [InlineData("""[{"mark":"came","id":"1","at":"2027-08-03T09:00:00Z","person":"p1","how":"here"}]""")]
    [InlineData("""[{"mark":"came","id":"00000001-0000-0000-0000-000000000000","at":"nine","person":"p1","how":"here"}]""")]
    [InlineData("""[{"mark":"came","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00Z","person":"p1","how":"maybe"}]""")]
    public void What_is_no_mark_is_none(string json) => Assert.Null(Assert.Single(BoardText.TryReadList(json)!));

    /// <summary>What boards and files hold for ever; never edited.</summary>
    [Theory]
    [InlineData("""{"mark":"came","person":"p1","how":"late","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"set","person":"p1","item":"a1","set":2,"how":"otherwise","exercise":"back-squat","weight":"82.5 kg","amount":5,"left":3,"id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"swap","person":"p1","item":"a1","exercise":null,"id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"rack","rack":"3","isOut":true,"id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"stand","person":"p1","rack":"3","half":"a","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"way","way":"otherBars","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"way","way":"split","turns":[{"from":4,"to":26,"half":"a","parts":"A"}],"id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"start","isRunning":true,"since":"2027-08-03T08:50:00+00:00","id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    [InlineData("""{"mark":"start","isRunning":true,"id":"00000001-0000-0000-0000-000000000000","at":"2027-08-03T09:00:00+00:00"}""")]
    public void A_mark_keeps_its_form(string json) => Assert.Equal(json, BoardText.Of(BoardText.TryRead(json)!));

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
