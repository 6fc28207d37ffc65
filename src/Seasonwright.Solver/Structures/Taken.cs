namespace Seasonwright.Solver;

/// <summary>A step that the search took.</summary>
/// <param name="Value">Of the plan up to here, in units, less what was paid.</param>
/// <param name="Paid">For conditions broken up to here, in units.</param>
/// <param name="From">Place of the stand it came from.</param>
internal readonly record struct Taken(Move Move, int Points, long Value, long Paid, int From);
