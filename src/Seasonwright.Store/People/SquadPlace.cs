using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A player's row in the list of a team.</summary>
/// <param name="Team">The team's stream; the row goes with it.</param>
/// <param name="Place">From 0, in the order of the list.</param>
internal sealed record SquadPlace(ClubId Club, StreamId Team, int Place)
{
    /// <summary>Who stands there.</summary>
    public SquadMember Member { get; init; } = null!;
}
