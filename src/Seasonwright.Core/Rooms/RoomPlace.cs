namespace Seasonwright.Core.Rooms;

/// <summary>Where a session stands in the room's week.</summary>
/// <param name="IsLocked">A proposal leaves it there, whatever it clashes with.</param>
public sealed record RoomPlace(DateOnly Day, TimeOnly Start, bool IsLocked = false);
