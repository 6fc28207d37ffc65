using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>
/// Where an edit becomes a step or a refusal with the rulebook's say in it: a stop holds back what would be published, what is
/// accepted is what the rulebook finds now, a dose is of a quality on the team's list, and a figure takes only what its rule can read. Replay asks neither, see <see cref="Decider"/>.
/// </summary>
public static class RuledDecider
{
    /// <param name="setup">The setup of the season's team, whose figures hold.</param>
    public static Decision Decide(Season season, Setup setup, SeasonEdit edit)
    {
        // People are rows: what is found about them goes with them and is never in the log.
        if (edit is AcceptFinding { Finding: var found } && (Place.IsOfPlayer(found.About) || Rulebook.Find(found.Rule) is { IsOfPlayers: true }))
            return new Refused([Refusal.Say("finding-of-player", "finding", Rulebook.Find(found.Rule)?.Name ?? found.Rule)]);
        if (edit is AcceptFinding accept) return Rulebook.Check(season, setup).Find(accept.Finding) is { } finding
            ? Decider.Decide(season, accept with { Acceptance = finding.AcceptedFor(accept.Acceptance) })
            : new Refused([Refusal.Say("finding-gone", "finding", Rulebook.Find(accept.Finding.Rule)?.Name ?? accept.Finding.Rule)]);
        // What a season knew of a quality since taken off the list stays.
        if (edit is SetSession { Session: var session } && (session.Doses ?? []).FirstOrDefault(dose => setup.Qualities.All(quality => quality.Id != dose.Quality)
            && season.Session(session.Id)?.Doses?.Any(old => old.Quality == dose.Quality) != true) is { } unknown)
        {
            return new Refused([Refusal.Say("quality-unknown", $"session/{session.Id}.doses", unknown.Quality)]);
        }
        if (edit is not Publish) return Decider.Decide(season, edit);
        var stops = Rulebook.Check(season, setup).Stops.ToList();
        return stops.Count == 0
            ? Decider.Decide(season, edit)
            : new Refused(stops.Select(stop => Refusal.Say("publish-stopped", $"rule/{stop.Rule.Id}", stop.Sentence, stop.ReleasersInWords)).ToValueList());
    }

    public static Decision Decide(Setup setup, SetupEdit edit) => edit is SetRuleParameter set && Objection(set) is { } refusal
        ? new Refused([refusal])
        : Decider.Decide(setup, edit);

    private static Refusal? Objection(SetRuleParameter set)
    {
        var (id, name) = (set.Parameter.Rule, set.Parameter.Name);
        var subject = $"rule/{set.Parameter}";
        if (Rulebook.Find(id) is not { } rule) return Refusal.Say("rule-unknown", subject, id);
        if (rule.IsFixed) return Refusal.Say("rule-fixed", subject, rule.Name);
        if (rule.Settings.FirstOrDefault(figure => figure.Name == name) is not { } figure)
            return Refusal.Say("figure-unknown", subject, rule.Name, name, string.Join(", ", rule.Settings.Select(known => known.Name)));
        return string.IsNullOrWhiteSpace(set.Value) || figure.Canonical(set.Value) is not null
            ? null
            : Refusal.Say("figure-value", subject, rule.LabelOf(figure), set.Value, RuleText.Taken(figure));
    }
}
