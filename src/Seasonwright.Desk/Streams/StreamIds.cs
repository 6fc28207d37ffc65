using Seasonwright.Core.Seasons;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Streams;

/// <summary>What the log calls a team.</summary>
internal static class StreamIds
{
    /// <summary>The one club of a data folder.</summary>
    public static StreamId Club { get; } = new(ClubId.Local.Value);

    public static StreamId Of(TeamId team) => new(Guid.Parse(team.Text));
}
