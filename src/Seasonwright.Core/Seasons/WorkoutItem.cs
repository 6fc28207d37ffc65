namespace Seasonwright.Core.Seasons;

/// <summary>One exercise of a workout.</summary>
/// <param name="Note">To whoever does it. No health details belong here.</param>
public sealed record WorkoutItem(WorkoutItemId Id, ExerciseId Exercise, Prescription Prescription, string? Note = null);
