using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rooms;

/// <summary>A practice of a team's, or a session of ours elsewhere, at any minute of a day.</summary>
/// <param name="Groups">Of the team, whom it is for; null for everyone.</param>
public sealed record RoomPractice(DateOnly Day, TimeOnly Start, Minutes Minutes, ValueList<GroupId>? Groups = null)
{
    public int From => Clock.Minute(Start);

    public int To => From + Minutes.Value;
}
