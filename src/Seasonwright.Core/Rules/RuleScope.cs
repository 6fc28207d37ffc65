namespace Seasonwright.Core.Rules;

/// <summary>What a rule looks at.</summary>
public enum RuleScope
{
    Season,
    Block,
    Week,
    Day,
    Athlete,
}
