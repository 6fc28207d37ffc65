using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A quality that a practice of the head coach's is asked to hold: a suggestion, told and never entered.</summary>
/// <param name="Day">Index of the practice's day.</param>
public sealed record AskedOfPractice(int Day, QualityKind Quality);
