namespace Seasonwright.Core.Seasons;

/// <summary>A day on which the squad, or part of it, is tested.</summary>
/// <param name="Battery">What is tested, in the coach's words.</param>
/// <param name="Part">Part of the day, in words; null for the whole day.</param>
/// <param name="For">Whom; null for everyone.</param>
/// <param name="Source">The list it came from; null for one entered by hand.</param>
public sealed record TestDay(TestDayId Id, DateOnly Day, string Battery, string? Part = null, string? For = null, EventSource? Source = null);
