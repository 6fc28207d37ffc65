namespace Seasonwright.Core.Rooms;

/// <summary>Opening hours of a room on one weekday, on the half hour.</summary>
public sealed record RoomHours(DayOfWeek Day, TimeOnly From, TimeOnly To);
