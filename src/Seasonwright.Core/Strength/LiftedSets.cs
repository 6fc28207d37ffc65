namespace Seasonwright.Core.Strength;

/// <summary>Sets that are alike.</summary>
/// <param name="Sets">1 and more.</param>
/// <param name="Repetitions">Of each, 1 and more.</param>
/// <param name="Load">Of each repetition, in any one unit.</param>
public readonly record struct LiftedSets(int Sets, int Repetitions, decimal Load);
