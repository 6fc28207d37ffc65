using System.Globalization;
using System.Text;
using Seasonwright.Core.Rules;

namespace Seasonwright.Documents.Rules;

/// <summary>The whole rulebook as one page of Markdown, lines ending with LF; <c>docs/rules.md</c> is it.</summary>
public static class RulesPaper
{
    private const string Head =
        "Written from the program's own rules by `seasonwright rules --format md`; a test keeps it true. Every figure is a default that a team may change. "
        + "The rulebook prompts, it never decides about a person and never predicts injury. Contested rules are never called more than a caution unless a team says so.";

    public static string Write()
    {
        var page = new StringBuilder();
        page.Append("# Rulebook\n\n").Append(CultureInfo.InvariantCulture, $"{Head} {Rulebook.All.Count(rule => rule.IsLive)} of {Rulebook.All.Count} rules judge a plan, {Rulebook.All.Count(rule => rule.IsOfPlayers)} the week of a squad; the others wait for what neither holds, which is said instead of \"fine\".\n\n");
        foreach (var scope in Enum.GetValues<RuleScope>())
        {
            page.Append(CultureInfo.InvariantCulture, $"## {RuleText.Of(scope)}\n\n");
            foreach (var rule in Rulebook.All.Where(rule => rule.Scope == scope)) Write(page, rule);
        }
        page.Append("## Sources\n\nA star marks those of which only the record, the abstract or a part was read.\n\n");
        var sources = Rulebook.All.SelectMany(rule => rule.Sources).Distinct().OrderBy(source => source.Citation, StringComparer.OrdinalIgnoreCase);
        foreach (var source in sources) page.Append(CultureInfo.InvariantCulture, $"- {source.Citation}{(source.IsPartOnly ? " *" : "")} <{source.Address}>\n");
        return page.ToString().Replace(" *\n", " \\*\n", StringComparison.Ordinal);
    }

    private static void Write(StringBuilder page, Rule rule)
    {
        page.Append(CultureInfo.InvariantCulture, $"### {rule.Name}\n\n`{rule.Id}`, at most a {RuleText.Of(RuleText.HighestByDefault(rule)).ToLowerInvariant()} by default; evidence: {RuleText.Of(rule.Evidence)}; sources {RuleText.Of(rule.Status)}.");
        if (RuleText.Of(rule.Needs) is { } needs) page.Append(CultureInfo.InvariantCulture, $" {(rule.IsLive || rule.IsOfPlayers ? "A part of it waits" : "It waits")} for: {needs}.");
        if (rule.IsOfPlayers) page.Append(" About players: never in a plan's findings.");
        if (rule.IsFixed) page.Append(" Cannot be switched off.");
        if (rule.OnlyBy is not null) page.Append(" Off until a governing body's limits are chosen and dated.");
        page.Append(CultureInfo.InvariantCulture, $"\n\n{rule.What}\n\n");
        foreach (var figure in rule.Figures) page.Append(CultureInfo.InvariantCulture, $"- {rule.LabelOf(figure)} (`{figure.Name}`): {RuleText.Of(rule, figure, figure.Default)}\n");
        if (rule.Figures.Count > 0) page.Append('\n');
        page.Append(CultureInfo.InvariantCulture, $"**What helps.** {rule.UsualRemedy}\n\n**How far to trust it.** {rule.Caveat}\n\n");
        if (rule.Contested is { } contested) page.Append(CultureInfo.InvariantCulture, $"**Contested.** {contested}\n\n");
        if (rule.FromMemory is { } memory) page.Append(CultureInfo.InvariantCulture, $"From memory: {memory}\n\n");
        if (rule.WorkingDefault is { } working) page.Append(CultureInfo.InvariantCulture, $"Working default: {working}\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Sources: {rule.Citations}\n\n");
    }
}
