using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What is fixed in a week, or stands. What is null is free.</summary>
/// <param name="Phase">Peak is read as competition: it is a label of the engine.</param>
/// <param name="Points">The whole week's load.</param>
public sealed record WeekLock(PhaseKind? Phase, WeekKind? Kind, int? Points);
