using Seasonwright.Core.Calendar;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Web.Rules;

/// <summary>A rule, and how it stands to one season.</summary>
/// <param name="Findings">Its open findings, the most serious first.</param>
/// <param name="Acceptances">What the coach has accepted of it in this season.</param>
/// <param name="Offer">What would make it the team's own way; null where nothing is offered.</param>
/// <param name="HasOwn">Whether the team has set a figure of it.</param>
public sealed record RuleAtSeason(Rule Rule, RuleAnswer Answer, IReadOnlyList<Finding> Findings, IReadOnlyList<AcceptedEntry> Acceptances, OurWay? Offer, bool HasOwn)
{
    /// <summary>Every rule, in the order of running.</summary>
    public static IReadOnlyList<RuleAtSeason> All(Season season, Setup setup, Checkup checkup)
    {
        var answers = checkup.Answers.ToDictionary(answer => answer.Rule.Id, StringComparer.Ordinal);
        var findings = checkup.Findings.ToLookup(finding => finding.Rule.Id, StringComparer.Ordinal);
        var silent = checkup.Accepted.ToDictionary(entry => entry.Finding.Key, entry => entry.Finding);
        var accepted = season.Accepted.Select(entry => new AcceptedEntry(entry.Finding, entry.Acceptance, silent.GetValueOrDefault(entry.Finding), checkup.Findings.Any(finding => finding.Key == entry.Finding)))
            .ToLookup(entry => entry.Key.Rule, StringComparer.Ordinal);
        var offers = OurWay.Of(season, setup, checkup).ToDictionary(offer => offer.Rule.Id, StringComparer.Ordinal);
        return [.. Rulebook.All.Select(rule => new RuleAtSeason(rule, answers[rule.Id], [.. findings[rule.Id]], [.. accepted[rule.Id]], offers.GetValueOrDefault(rule.Id),
            rule.Settings.Any(figure => new Figures(rule.Id, setup).Text(figure) != figure.Default)))];
    }

    /// <param name="state">One of <see cref="RuleFilter.States"/>.</param>
    public bool Is(string state) => state switch
    {
        "against" => Findings.Count > 0,
        "accepted" => Acceptances.Count > 0,
        "checked" => Answer.State == RuleState.Checked && Answer.Against == Answer.Told,
        "nothing" => Answer.State == RuleState.NothingToCheck,
        "too-little" => Answer.State == RuleState.TooLittle,
        "squad" => Answer.State == RuleState.Waits && Rule.IsOfPlayers,
        "waits" => Answer.State == RuleState.Waits && !Rule.IsOfPlayers,
        "off" => Answer.State == RuleState.Off,
        "own" => HasOwn,
        _ => false,
    };
}

/// <summary>A finding that was accepted.</summary>
/// <param name="Finding">As it is now; null where it is open again or found no more.</param>
/// <param name="IsOpen">It is shown all the same: it grew, or the rule's figures changed.</param>
public sealed record AcceptedEntry(FindingKey Key, Acceptance Acceptance, Finding? Finding, bool IsOpen)
{
    /// <summary>Where it is or was, as far as the season still tells.</summary>
    public Place? In(Season season) => Finding?.Place
        ?? (Key.About.Split('/') is ["week", var id] && season.Week(new WeekId(id)) is { } week ? new Place(Key.About, week.Number, week.Number) : null);
}
