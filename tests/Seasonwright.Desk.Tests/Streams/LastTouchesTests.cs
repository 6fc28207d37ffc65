using Seasonwright.Core.Edits;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

public class LastTouchesTests
{
    [Fact]
    public async Task The_last_hand_on_a_figure_is_named_an_undo_and_a_step_back_to_the_default_too()
    {
        await using var desk = await Desk.OpenAsync();
        var team = (await desk.SeasonAsync(await desk.StartAsync())).TeamStream;
        var (up, points) = (new RuleParameter("weekly-ramp", "caution_up"), new RuleParameter("weekly-ramp", "caution_points"));
        Assert.Null(await WhoAsync(up));

        await SetAsync(desk.Runa, up, "0.12");
        await SetAsync(desk.Tove, points, "8");
        Assert.Equal(("runa", "tove"), (await WhoAsync(up), await WhoAsync(points)));
        Assert.Equal(desk.Clock.GetUtcNow(), (await LastTouches.OfAsync(team)).Of(SetupFacets.RuleParameter.Of(points))!.Instant);
        await SetAsync(desk.Tove, up, null);
        Assert.Equal("tove", await WhoAsync(up));
        await SetAsync(desk.Runa, up, "0.1");
        Assert.IsType<Kept>(await team.UndoAsync(desk.Runa, Guid.NewGuid()));
        Assert.Equal(("runa", "tove"), (await WhoAsync(up), await WhoAsync(points)));

        async Task SetAsync(Actor actor, RuleParameter figure, string? value)
        {
            desk.Clock.Advance(TimeSpan.FromMinutes(1));
            Assert.IsType<Kept>(await team.ApplyAsync(actor, new Gesture(Guid.NewGuid(), team.State.Number, [new SetRuleParameter(figure, value)])));
        }

        async Task<string?> WhoAsync(RuleParameter figure) => (await LastTouches.OfAsync(team)).Of(SetupFacets.RuleParameter.Of(figure))?.Author;
    }
}
