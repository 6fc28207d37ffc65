namespace Seasonwright.Solver;

/// <summary>Why a week is as it is.</summary>
/// <param name="Rule">Id of the rule that stands behind it; empty for a planning preference or the calendar.</param>
/// <param name="Condition">What binds; null for a fact. Without it the week could be otherwise.</param>
public sealed record WeekReason(string Sentence, string Rule, Condition? Condition = null);
