namespace Seasonwright.Core.Rules;

/// <summary>A publication behind a rule.</summary>
/// <param name="Address">Where it was read.</param>
/// <param name="IsPartOnly">Only its record, abstract or a part could be read.</param>
public sealed record Source(string Citation, string Address, bool IsPartOnly = false);
