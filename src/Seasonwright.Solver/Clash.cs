using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>Wishes and rules that cannot all hold.</summary>
/// <param name="Colliding">A smallest set: without any one of them the rest can hold together.</param>
/// <param name="LeastBroken">The plan that breaks least of all conditions, at their prices.</param>
public sealed record Clash(ValueList<Colliding> Colliding, Structure LeastBroken);

/// <summary>One of the conditions that collide.</summary>
/// <param name="Week">Index of the week of a lock; null for what holds everywhere.</param>
public sealed record Colliding(Condition Condition, int? Week);
