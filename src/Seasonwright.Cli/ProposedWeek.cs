using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A proposed week as <c>propose</c> shows it to people.</summary>
/// <param name="Load">In per cent of the normal hard week.</param>
/// <param name="Focus">The qualities that are developed or in focus, in the team's words.</param>
/// <param name="Why">Why the week is of its kind.</param>
internal sealed record ProposedWeek(int Week, DateOnly From, string Phase, string Kind, int Matches, int Load, string Focus, string Test, string Why)
{
    public static Table<ProposedWeek> Table { get; } = new(
    [
        new("week", row => Number(row.Week), IsNumber: true),
        new("from", row => Day(row.From)),
        new("phase", row => row.Phase),
        new("kind", row => row.Kind),
        new("matches", row => row.Matches == 0 ? "" : Number(row.Matches), IsNumber: true),
        new("load", row => Number(row.Load), IsNumber: true),
        new("developed", row => row.Focus),
        new("tests", row => row.Test),
        new("why", row => row.Why),
    ]);

    public static IReadOnlyList<ProposedWeek> Of(Season season, Setup setup, Proposal proposal) =>
    [
        .. season.Weeks.Select(week => new ProposedWeek(
            week.Number, week.Days.First,
            season.PhaseOf(week) is { Phase: var phase } ? phase.Name ?? Sentences.Say($"phase.{phase.Kind}") : "",
            season.KindOf(week.Id) is { } kind ? Sentences.Say($"kind.{kind}") : "",
            season.MatchesIn(week).Count(match => !match.IsOff),
            proposal.Loads.Points[week.Number - 1],
            string.Join(", ", setup.Qualities.Where(quality => season.EmphasisOf(week.Id, quality.Id) >= Emphasis.Develop).Select(quality => quality.Name)),
            string.Join(", ", season.TestDays.Where(test => week.Days.Contains(test.Day)).Select(test => test.Day.ToString("ddd d MMM", CultureInfo.InvariantCulture))),
            proposal.Reasons[week.Number - 1][0].Sentence)),
    ];
}
