namespace Seasonwright.Core.Seasons;

/// <summary>
/// A finding that the coach lives with, and why. It is silent while nothing about it is worse and the rule's figures are the same.
/// </summary>
/// <param name="Reason">In the coach's words; kept for the season's review.</param>
/// <param name="Size">How far beyond the limit it was, its places together.</param>
/// <param name="Figures">The rule's figures that held, as the rulebook writes them.</param>
/// <param name="Releaser">Who released a stop, by name; null for what the coach may decide.</param>
/// <param name="Role">As what they released it.</param>
/// <param name="Worst">How far beyond the limit its worst place was; null where that was not yet kept.</param>
/// <param name="Severity">How serious it was; null where that was not yet kept.</param>
public sealed record Acceptance(string Reason, decimal Size, string Figures, string? Releaser = null, StaffRole? Role = null, decimal? Worst = null, Severity? Severity = null);
