using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Web.Rules;

/// <summary>Counts of the rulebook in words.</summary>
internal static class RuleLine
{
    /// <summary>"3 cautions".</summary>
    public static string Count(Severity severity, int count) => Words.Say(count == 1 ? $"rulebook.one.{severity}" : $"rulebook.many.{severity}", count);

    /// <summary>Everything that rules wait for, and how many do; one rule may wait for several.</summary>
    public static string Waiting(IEnumerable<RuleAtSeason> rules)
    {
        var waiting = rules.Where(rule => rule.Is("waits")).Select(rule => rule.Rule.Needs).ToList();
        var needs = Enum.GetValues<Needs>().Where(need => need != Needs.None)
            .Select(need => (Words: RuleText.Of(need), Count: waiting.Count(needs => needs.HasFlag(need))))
            .Where(need => need.Count > 0).OrderByDescending(need => need.Count).Select(need => Words.Say("rulebook.need", need.Words, need.Count));
        return Words.Say("rulebook.waiting", waiting.Count, string.Join(", ", needs));
    }

    /// <summary>What an offer comes to.</summary>
    public static string Meaning(OurWay offer, string team) => string.Join(' ',
        Words.Say("rulebook.way-team", team),
        offer.Silent == offer.Accepted ? Words.Say("rulebook.way-all") : Words.Say("rulebook.way-some", offer.Silent, offer.Accepted),
        offer.Left.Count == 0 ? Words.Say("rulebook.way-none-left") : Words.Say(offer.Left.Count == 1 ? "rulebook.way-one-left" : "rulebook.way-left", offer.Left.Count));

    /// <summary>The most serious the team lets a rule be called.</summary>
    public static string AtMost(Rule rule, Setup setup) => Words.Say("rulebook.at-most", RuleText.Of(rule.HighestFor(setup)).ToLowerInvariant());
}
