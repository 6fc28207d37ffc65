using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A test day that a match or an event has come too near to.</summary>
/// <param name="To">Where it goes; null where no day near it is better, so that it stays.</param>
public sealed record MovedTest(TestDayId Id, DateOnly From, DateOnly? To);
