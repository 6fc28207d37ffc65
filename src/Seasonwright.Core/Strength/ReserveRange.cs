namespace Seasonwright.Core.Strength;

/// <summary>Repetitions in reserve: how many more were possible, from the fewest to the most.</summary>
/// <param name="HasMoreLoad">No repetition was left, but a little more load was possible.</param>
public readonly record struct ReserveRange(int Least, int Most, bool HasMoreLoad = false);
