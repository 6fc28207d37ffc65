namespace Seasonwright.Solver;

/// <summary>Why a week is as it is.</summary>
/// <param name="Rule">Id of the rule that stands behind it; empty for a planning preference or the calendar.</param>
public sealed record WeekReason(string Sentence, string Rule);
