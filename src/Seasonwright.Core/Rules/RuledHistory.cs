using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>What an edit did, with rules and their figures named as people name them. An edit itself knows a rule only by its id.</summary>
public static class RuledHistory
{
    public static string Describe(Season season, Setup setup, SeasonEdit edit) => edit switch
    {
        AcceptFinding accept when NameOf(accept.Finding.Rule) is { } name => accept.Describe(name),
        ReopenFinding reopen when NameOf(reopen.Finding.Rule) is { } name => ReopenFinding.Describe(name),
        _ => edit.Describe(season, setup),
    };

    public static string Describe(Setup setup, SetupEdit edit)
    {
        // A figure that was dropped since, or a value that was taken before it was checked, is told as it stands in the log.
        if (edit is not SetRuleParameter set || Rulebook.Find(set.Parameter.Rule) is not { } rule
            || rule.Settings.FirstOrDefault(figure => figure.Name == set.Parameter.Name) is not { } figure) return edit.Describe(setup);
        return string.IsNullOrWhiteSpace(set.Value) ? RuleWords.Say("history.figure-default", rule.Name, rule.LabelOf(figure), RuleText.Of(rule, figure, figure.Default))
            : figure.Canonical(set.Value) is { } value ? RuleWords.Say("history.figure", rule.Name, rule.LabelOf(figure), RuleText.Of(rule, figure, value))
            : edit.Describe(setup);
    }

    private static string? NameOf(string rule) => Rulebook.Find(rule)?.Name;
}
