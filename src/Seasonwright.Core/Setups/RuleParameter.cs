using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Setups;

/// <summary>Which figure of which rule, written "rule:name".</summary>
public readonly record struct RuleParameter(string Rule, string Name) : ISubject<RuleParameter>
{
    public static RuleParameter Parse(string text) => text.Split(':') is [{ Length: > 0 } rule, { Length: > 0 } name]
        ? new(rule, name)
        : throw new FormatException($"'{text}' is no rule parameter: \"rule:name\" is.");

    public override string ToString() => $"{Rule}:{Name}";
}
