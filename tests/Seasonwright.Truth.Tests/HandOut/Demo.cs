using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Documents.HandOut;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>Harbour Vale's season, as it is handed out.</summary>
internal static class Demo
{
    public static SharedSeason Shared(DateOnly anchor)
    {
        var demo = DemoSeason.Make(anchor);
        var season = demo.Edits.Aggregate(Season.Empty(demo.Id), (state, edit) => state.With(Step(Decider.Decide(state, edit))));
        var setup = demo.Setup.Aggregate(Setup.Empty(new("team")), (state, edit) => state.With(Step(Decider.Decide(state, edit))));
        return new SharedSeason(season, setup, new Edition(season.LastPublication, anchor));
    }

    private static Core.Facts.Step Step(Decision decision) => Assert.IsType<Accepted>(decision).Step;
}
