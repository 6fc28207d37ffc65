using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>What the rulebook says to a plan.</summary>
/// <param name="Findings">Open ones, the most serious first, then those the plan can change before those of the calendar, then the largest.</param>
/// <param name="Accepted">Those the coach lives with, and why.</param>
/// <param name="Answers">What each rule could look at, in order of ids.</param>
public sealed record Checkup(ValueList<Finding> Findings, ValueList<AcceptedFinding> Accepted, ValueList<RuleAnswer> Answers)
{
    /// <summary>Of a season that is not started.</summary>
    public static Checkup Empty { get; } = new([], [], []);

    /// <summary>What must be changed or released before anything is published.</summary>
    public IEnumerable<Finding> Stops => Findings.Where(finding => finding.Severity == Severity.Stop);

    /// <summary>The finding of this key, open or accepted; null where nothing of the kind is found now.</summary>
    public Finding? Find(FindingKey key) => Findings.Concat(Accepted.Select(entry => entry.Finding)).FirstOrDefault(finding => finding.Key == key);
}

/// <summary>A finding that the coach lives with.</summary>
public sealed record AcceptedFinding(Finding Finding, Acceptance Acceptance);
