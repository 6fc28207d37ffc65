using Seasonwright.Core.Rules;
using Seasonwright.Core.Setups;

namespace Seasonwright.Web.Rules;

/// <summary>A rule, and how it stands to one season.</summary>
/// <param name="Findings">Its open findings, the most serious first.</param>
/// <param name="Accepted">Those the coach lives with.</param>
/// <param name="HasOwn">Whether the team has set a figure of it.</param>
public sealed record RuleAtSeason(Rule Rule, RuleAnswer Answer, IReadOnlyList<Finding> Findings, IReadOnlyList<AcceptedFinding> Accepted, bool HasOwn)
{
    /// <summary>Every rule, in the order of running.</summary>
    public static IReadOnlyList<RuleAtSeason> All(Checkup checkup, Setup setup)
    {
        var answers = checkup.Answers.ToDictionary(answer => answer.Rule.Id, StringComparer.Ordinal);
        var findings = checkup.Findings.ToLookup(finding => finding.Rule.Id, StringComparer.Ordinal);
        var accepted = checkup.Accepted.ToLookup(entry => entry.Finding.Rule.Id, StringComparer.Ordinal);
        return [.. Rulebook.All.Select(rule => new RuleAtSeason(rule, answers[rule.Id], [.. findings[rule.Id]], [.. accepted[rule.Id]],
            rule.Settings.Any(figure => new Figures(rule.Id, setup).Text(figure) != figure.Default)))];
    }

    /// <param name="state">One of <see cref="RuleFilter.States"/>.</param>
    public bool Is(string state) => state switch
    {
        "against" => Findings.Count > 0,
        "accepted" => Accepted.Count > 0,
        "checked" => Answer is { State: RuleState.Checked, Against: 0 },
        "nothing" => Answer.State == RuleState.NothingToCheck,
        "too-little" => Answer.State == RuleState.TooLittle,
        "waits" => Answer.State == RuleState.Waits,
        "off" => Answer.State == RuleState.Off,
        "own" => HasOwn,
        _ => false,
    };
}
