using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Seasons;

/// <summary>Names one finding of the rulebook across changes of the plan: which rule, which of its sentences, and about what.</summary>
/// <param name="Rule">The rule's id.</param>
/// <param name="Code">Which of the rule's findings it is.</param>
/// <param name="About">What it is about: "week/ID", "match/ID", "test/ID", "event/ID", "session/ID", "day/yyyy-MM-dd" or "season"; "player/ID" for one about a person, which is never in the log.</param>
public readonly record struct FindingKey(string Rule, string Code, string About) : ISubject<FindingKey>
{
    public string Rule { get; } = IdText.Check(Rule);

    public string Code { get; } = IdText.Check(Code);

    public string About { get; } = IsAbout(About) ? About : throw new FormatException($"'{About}' is nothing a finding is about.");

    private static bool IsAbout(string about)
    {
        foreach (var part in about.AsSpan().Split('/'))
            if (!IdText.IsId(about.AsSpan(part))) return false;
        return true;
    }

    public static FindingKey Parse(string text) => text.Split(':') is [var rule, var code, var about]
        ? new(rule, code, about)
        : throw new FormatException($"'{text}' names no finding: \"rule:code:about\" does.");

    public override string ToString() => $"{Rule}:{Code}:{About}";
}
