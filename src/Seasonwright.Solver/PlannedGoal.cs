using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A quality that is trained for and its share of what matters.</summary>
/// <param name="Weight">Per cent; the weights of all goals sum to 100.</param>
public sealed record PlannedGoal(QualityKind Quality, int Weight);
