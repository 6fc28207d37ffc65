using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Seasons;

/// <summary>The rulebook's say at the desk: stops hold publishing back, figures take only what their rule reads.</summary>
public class RuledPublishTests
{
    private static readonly Edit[] StopAt72 = [new SetRuleParameter(new("match-gap-short", "preset"), "stop_72"), new SetRuleParameter(new("match-gap-short", "preset_date"), "2027-07-01")];

    [Fact]
    public async Task A_stop_holds_publishing_back_until_somebody_who_may_releases_it()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, StopAt72));
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Match("a", 20), Match("b", 22))));
        var stop = Assert.Single(open.Checkup.Stops);

        var refused = Assert.IsType<NotDone>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish())));
        Assert.Equal("publish-stopped", Assert.Single(refused.Reasons).Id);
        Assert.Contains(stop.Sentence, refused.Reasons[0].Sentence, StringComparison.Ordinal);
        // The coach's own word does not release it, nor that of somebody the rule does not name.
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, stop.Accept("We want to play")));
        Assert.Single(open.Checkup.Stops);
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, stop.Accept("We want to play", "Runa Eskdale", StaffRole.HeadCoach)));
        Assert.Single(open.Checkup.Stops);

        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, stop.Accept("Minutes are capped", "Mara Lindt", StaffRole.Doctor)));
        Assert.Empty(open.Checkup.Stops);
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish())));
        // What is published stays so, and another start opens it, whatever the rules say by then.
        await desk.RestartAsync();
        Assert.Equal(1, (await desk.SeasonAsync(open.Season.Id)).Season.LastPublication?.Number);
    }

    [Theory]
    [InlineData("weekly-ramp", "caution_points", "12", null)]
    [InlineData("weekly-ramp", "caution_points", null, null)]
    [InlineData("weekly-ramp", "caution_points", "twelve", "figure-value")]
    [InlineData("weekly-ramp", "caution_points", "-1", "figure-value")]
    [InlineData("weekly-ramp", "most", "1", "figure-unknown")]
    [InlineData("weekly-change", "most", "1", "rule-unknown")]
    [InlineData("weekly-ramp", "on", "no", null)]
    [InlineData("concussion-clearance", "on", "no", "rule-fixed")]
    [InlineData("match-gap-short", "preset", "stop_71", "figure-value")]
    [InlineData("match-gap-short", "preset_date", "1 July", "figure-value")]
    public async Task A_figure_takes_what_its_rule_reads(string rule, string figure, string? value, string? refusal)
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        var answer = await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetRuleParameter(new(rule, figure), value)]));
        if (refusal is null) Assert.IsType<Kept>(answer);
        else Assert.Equal(refusal, Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Id);
    }

    private static SetMatch Match(string id, int day) => new(new Match(new(id), new DateOnly(2027, 8, day), KickOff: new TimeOnly(19, 0)));
}
