namespace Seasonwright.Solver;

/// <summary>One way to go on from a stand: a move with a load.</summary>
/// <param name="Value">Of this week, in units, less what is paid.</param>
/// <param name="Paid">For conditions broken in it, in units.</param>
internal readonly record struct Option(Move Move, int Points, long Value, long Paid, Stand After);
