using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Strength;

/// <summary>A part of a workout as it is done in a week.</summary>
public sealed record WrittenPart(WorkoutPart Part, ValueList<WrittenItem> Items);

/// <summary>An exercise of a workout as it is done in a week.</summary>
/// <param name="IsOwn">The coach wrote it for this week; else it follows.</param>
public sealed record WrittenItem(WorkoutItem Item, Prescription Prescription, bool IsOwn);
