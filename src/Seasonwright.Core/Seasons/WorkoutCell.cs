namespace Seasonwright.Core.Seasons;

/// <summary>What the coach wrote for one exercise in one week in place of what follows.</summary>
/// <param name="Prescription">Null: not done that week.</param>
public sealed record WorkoutCell(WeekId Week, WorkoutItemId Item, Prescription? Prescription);
