using Seasonwright.Core.Edits;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>The kinds of stream there are.</summary>
internal static class Trades
{
    /// <param name="setup">The setup of the season's team as it stands, for the words of the history.</param>
    public static IStreamTrade Of(SeasonId id, Func<Setup> setup) => new StreamTrade<Season, SeasonEdit>(
        facts => new Season(id, facts), (season, edit) => RuledDecider.Decide(season, setup(), edit), (season, edit) => RuledHistory.Describe(season, setup(), edit), season => season.Team.Title ?? season.Team.Name);

    public static IStreamTrade Of(TeamId id) => new StreamTrade<Setup, SetupEdit>(
        facts => new Setup(id, facts), RuledDecider.Decide, RuledHistory.Describe, setup => setup.TeamName);

    public static IStreamTrade OfClub { get; } = new StreamTrade<Club, ClubEdit>(facts => new Club(facts), Decider.Decide, (club, edit) => edit.Describe(club), _ => "Club");
}
