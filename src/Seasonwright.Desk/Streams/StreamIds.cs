using Seasonwright.Core.Seasons;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Streams;

/// <summary>What the log calls a team.</summary>
internal static class StreamIds
{
    public static StreamId Of(TeamId team) => new(Guid.Parse(team.Text));
}
