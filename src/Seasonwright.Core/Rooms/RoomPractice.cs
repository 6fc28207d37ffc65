using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Rooms;

/// <summary>A practice of a team's, at any minute of a day.</summary>
public sealed record RoomPractice(DateOnly Day, TimeOnly Start, Minutes Minutes)
{
    public int From => Clock.Minute(Start);

    public int To => From + Minutes.Value;
}
