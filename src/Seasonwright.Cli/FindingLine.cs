using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A finding as <c>check</c> gives it.</summary>
/// <param name="Rule">The rule's id.</param>
/// <param name="Place">What it is about: "week", "match", "test", "event", "session", "day", "season" or "player".</param>
/// <param name="Weeks">"12" or "12-15".</param>
/// <param name="Forced">Matches and events alone bring it about, whatever is painted.</param>
/// <param name="Source">The rule's publications.</param>
internal sealed record FindingLine(string Rule, Severity Severity, string Place, string Weeks, string Message, bool Forced, string Source)
{
    public static Table<FindingLine> Table { get; } = new(
    [
        new("rule", line => line.Rule),
        new("severity", line => Word<Severity?>(line.Severity)),
        new("place", line => line.Place),
        new("weeks", line => line.Weeks),
        new("message", line => line.Message),
        new("forced", line => line.Forced ? "yes" : "no"),
        new("source", line => line.Source),
    ]);

    public static FindingLine Of(Finding finding) => new(
        finding.Rule.Id, finding.Severity, finding.Place.About.Split('/')[0], finding.Place.Weeks, finding.Sentence, finding.IsForced,
        finding.Rule.Citations);
}
