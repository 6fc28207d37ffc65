using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>The kinds of stream there are.</summary>
internal static class Trades
{
    public static IStreamTrade Of(SeasonId id) => new StreamTrade<Season, SeasonEdit>(
        facts => new Season(id, facts), Decider.Decide, (season, edit) => edit.Describe(season), season => season.Team.Title ?? season.Team.Name);

    public static IStreamTrade Of(TeamId id) => new StreamTrade<Setup, SetupEdit>(
        facts => new Setup(id, facts), Decider.Decide, (setup, edit) => edit.Describe(setup), setup => setup.TeamName);
}
