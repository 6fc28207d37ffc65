using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>Which figure of which rule, written "rule:name".</summary>
public readonly record struct RuleParameter(string Rule, string Name) : ISubject<RuleParameter>
{
    public string Rule { get; } = IdText.Check(Rule);

    public string Name { get; } = IdText.Check(Name);

    public static RuleParameter Parse(string text) => text.Split(':') is [var rule, var name]
        ? new(rule, name)
        : throw new FormatException($"'{text}' is no rule parameter: \"rule:name\" is.");

    public override string ToString() => $"{Rule}:{Name}";
}
