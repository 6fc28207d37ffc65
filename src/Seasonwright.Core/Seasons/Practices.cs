using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>The head coach's practices of one week: an input, planned around and never moved.</summary>
/// <param name="Count">0 to 14 in the week.</param>
/// <param name="Minutes">Length of one; null for the usual week's.</param>
/// <param name="Rpe">Effort of one; null for the usual week's.</param>
public sealed record Practices(int Count, Minutes? Minutes = null, Rpe? Rpe = null);
