using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A test day that stands in the season.</summary>
/// <param name="IsDisplaced">Of a repair: a match or an event has come too near since the plan was made.</param>
public sealed record PlannedTest(TestDayId Id, DateOnly Day, bool IsDisplaced);
