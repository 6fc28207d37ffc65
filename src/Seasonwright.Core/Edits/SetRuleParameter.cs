using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets a figure of a rule for this team; no value gives the rule's default back.</summary>
/// <param name="Value">An invariant number, a word, or a JSON list, as the rule reads it.</param>
public sealed record SetRuleParameter(RuleParameter Parameter, string? Value) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-rule", Parameter, Value ?? "-");

    internal override void Decide(Draft draft)
    {
        draft.Limit(Value, $"rule/{Parameter}", SeasonDraft.LongestName);
        if (string.IsNullOrWhiteSpace(Value)) draft.Remove(SetupFacets.RuleParameter, Parameter);
        else draft.Set(SetupFacets.RuleParameter, Parameter, Value);
    }
}
