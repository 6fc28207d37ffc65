using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A match of a fixture list as <c>fixtures</c> gives it. What the list does not say is null.</summary>
/// <param name="Date">The day, or the first possible one.</param>
/// <param name="DateTo">The last possible day of a window, inside it.</param>
/// <param name="Opponent">As written, or the one spelling of a club once that has been answered.</param>
/// <param name="SourceId">The list's own number of the match.</param>
/// <param name="Line">Where the row starts; null for a match that the list no longer holds.</param>
/// <param name="Ask">Ids of the open questions it needs answered before it may be taken as certain.</param>
/// <param name="Change">What the list does to it, compared with what was known; null without a comparison.</param>
internal sealed record FixtureLine(
    DateOnly? Date, string? Kickoff, string? Opponent, Venue? Venue, string? Competition, string? Round, MatchStatus Status, Importance Importance,
    DateOnly? DateTo, string? Place, string? Result, string? Condition, string? Remarks, string? SourceId, int? Line, IReadOnlyList<string> Ask, string? Change)
{
    public static Table<FixtureLine> Csv { get; } = new(
    [
        new("date", line => Day(line.Date)),
        new("kickoff", line => line.Kickoff),
        new("opponent", line => line.Opponent),
        new("venue", line => Word(line.Venue)),
        new("competition", line => line.Competition),
        new("round", line => line.Round),
        new("status", line => Word(line.Status)),
        new("importance", line => Word(line.Importance)),
        new("date_to", line => Day(line.DateTo)),
        new("place", line => line.Place),
        new("result", line => line.Result),
        new("condition", line => line.Condition),
        new("remarks", line => line.Remarks),
        new("source_id", line => line.SourceId),
        new("line", line => Number(line.Line)),
        new("ask", line => string.Join(' ', line.Ask)),
        new("change", line => line.Change),
    ]);

    /// <summary>For people: what a coach looks for, and what changed where that is known.</summary>
    public static Table<FixtureLine> Table(bool isCompared) => new(
    [
        new("line", line => Number(line.Line), IsNumber: true),
        new("date", line => Day(line.Date) + (line.DateTo is { } last ? $"..{Day(last)}" : "")),
        new("kickoff", line => line.Kickoff),
        new("opponent", line => line.Opponent),
        new("venue", line => Word(line.Venue)),
        new("competition", line => line.Competition),
        new("round", line => line.Round),
        new("status", line => Sentences.Say($"status.{line.Status}")),
        new("result", line => line.Result),
        new("ask", line => string.Join(' ', line.Ask)),
        .. isCompared ? new Column<FixtureLine>[] { new("change", line => line.Change) } : [],
    ]);

    /// <summary>The rows of a list in its order; where it has been compared, behind them the matches it no longer holds.</summary>
    public static IReadOnlyList<FixtureLine> Of(FixtureList list, FixtureUpdate? update) => update is null
        ? [.. list.Rows.Select(row => Of(row, row.Ask, null))]
        : [.. update.Changes.Where(change => change.Row is not null || change.Kind == ChangeKind.Vanished).Select(Of)];

    private static FixtureLine Of(FixtureChange change) => change.Row is { } row
        ? Of(row, row.Ask.Concat(change.Ask), ChangeLine.Word(change.Kind))
        : Of(change.Known!, ChangeLine.Word(change.Kind));

    private static FixtureLine Of(FixtureRow row, IEnumerable<string> ask, string? change) => new(
        row.Day, Time(row.KickOff), row.Club, row.Venue, row.Competition, row.Round, row.Status, row.Importance, row.LastDay, row.Place, row.Result,
        row.Condition, row.Remarks, row.SourceId, row.Line, [.. ask], change);

    private static FixtureLine Of(Match match, string change) => new(
        match.Day, Time(match.KickOff), match.Opponent, match.Venue, match.Competition, match.Round, match.Status, match.Importance, match.LastDay, match.Place, match.Result,
        match.Condition?.Words, match.Note, match.Source?.Id, null, [], change);
}
