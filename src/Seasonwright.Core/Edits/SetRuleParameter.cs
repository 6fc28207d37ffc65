using Seasonwright.Core.Rules;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets a figure of a rule for this team; no value gives the rule's default back.</summary>
/// <param name="Value">An invariant number, a word, or a JSON list, as the rule reads it.</param>
public sealed record SetRuleParameter(RuleParameter Parameter, string? Value) : SetupEdit
{
    public override string Describe(Setup setup)
    {
        // A newer version may know more rules and figures than this one.
        var rule = Rulebook.Find(Parameter.Rule);
        var figure = rule?.Settings.FirstOrDefault(figure => figure.Name == Parameter.Name);
        var name = rule is null || figure is null ? Parameter.ToString() : Sentences.Say("did.figure-of-rule", rule.LabelOf(figure), rule.Name);
        if (string.IsNullOrWhiteSpace(Value)) return Sentences.Say("did.reset-rule", name);
        return Sentences.Say("did.set-rule", name, rule is not null && figure?.Canonical(Value) is { } value ? RuleText.Of(rule, figure, value) : Value);
    }

    internal override void Decide(Draft draft)
    {
        draft.Limit(Value, $"rule/{Parameter}", SeasonDraft.LongestName);
        if (string.IsNullOrWhiteSpace(Value)) draft.Remove(SetupFacets.RuleParameter, Parameter);
        else draft.Set(SetupFacets.RuleParameter, Parameter, Value);
    }
}
