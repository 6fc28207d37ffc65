using Seasonwright.Core.Rules;

namespace Seasonwright.Web.Rules;

/// <summary>Which rules are asked for.</summary>
/// <param name="State">One of <see cref="States"/>, or "" for all.</param>
/// <param name="Search">Words that all stand in the rule; "" for any rule.</param>
internal sealed record RuleFilter(string State, string Search)
{
    /// <summary>How rules can stand to a season, in the order people ask for them.</summary>
    public static IReadOnlyList<string> States { get; } = ["against", "accepted", "checked", "nothing", "too-little", "squad", "waits", "off", "own"];

    public static RuleFilter Read(string? state, string? search) =>
        new(States.Contains(state, StringComparer.Ordinal) ? state! : "", (search ?? "").Trim());

    public bool Lists(RuleAtSeason rule) => State.Length == 0 || rule.Is(State);

    /// <summary>The address of the page that shows it.</summary>
    /// <param name="open">The rule to open.</param>
    public string Address(string season, string? open = null)
    {
        var query = new[] { ("state", State), ("q", Search), ("open", open ?? "") }.Where(part => part.Item2.Length > 0).Select(part => $"{part.Item1}={Uri.EscapeDataString(part.Item2)}").ToList();
        return $"/season/{season}/rulebook{(query.Count > 0 ? $"?{string.Join('&', query)}" : "")}{(open is null ? "" : $"#{Uri.EscapeDataString(open)}")}";
    }

    public bool Finds(Rule rule)
    {
        if (Search.Length == 0) return true;
        string?[] said = [rule.Name, rule.What, rule.UsualRemedy, rule.Caveat, rule.Contested, rule.FromMemory, rule.WorkingDefault, .. rule.Figures.Select(rule.LabelOf), .. rule.Sources.Select(source => source.Citation)];
        var text = string.Join(' ', said);
        return Search.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => text.Contains(word, StringComparison.CurrentCultureIgnoreCase));
    }
}
