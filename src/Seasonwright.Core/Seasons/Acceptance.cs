namespace Seasonwright.Core.Seasons;

/// <summary>A finding that the coach lives with, and why. It is silent while it is no larger and the rule's figures are the same.</summary>
/// <param name="Reason">In the coach's words; kept for the season's review.</param>
/// <param name="Size">How far beyond the limit it was.</param>
/// <param name="Figures">The rule's figures that held, as the rulebook writes them.</param>
/// <param name="Releaser">Who released a stop, by name; null for what the coach may decide.</param>
/// <param name="Role">As what they released it.</param>
public sealed record Acceptance(string Reason, decimal Size, string Figures, string? Releaser = null, StaffRole? Role = null);
