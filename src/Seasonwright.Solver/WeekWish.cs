using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What must hold in one week, or stands there. What is null is free.</summary>
/// <param name="Load">The whole week's, matches and practices included.</param>
public sealed record WeekWish(WeekId Week, PhaseKind? Phase = null, WeekKind? Kind = null, Load? Load = null);
