namespace Seasonwright.Core.Seasons;

/// <summary>What is done at home on one day of every week. A day that is not told of is free.</summary>
/// <param name="Workout">Null for none.</param>
/// <param name="Run">Null for none; at least one of the two.</param>
/// <param name="Note">To whoever does it. No health details belong here.</param>
public sealed record HomeDay(DayOfWeek Day, WorkoutId? Workout = null, HomeRun? Run = null, string? Note = null);
