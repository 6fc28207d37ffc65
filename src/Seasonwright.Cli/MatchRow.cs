using System.Text.Json.Serialization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A match of a season as <c>show --matches</c> gives it: all of them, undated ones last.</summary>
/// <param name="Date">The day, or the first possible one; null while unknown.</param>
/// <param name="LastDate">The last possible day; only given for a window.</param>
internal sealed record MatchRow(
    string Id, DateOnly? Date, string? Kickoff, string? Opponent, Venue? Venue, string? Competition, string? Round, Importance Importance, MatchStatus Status,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] DateOnly? LastDate)
{
    public static Table<MatchRow> Table { get; } = new(
    [
        new("id", row => row.Id),
        new("date", row => row.Date is { } day ? Day(day) + (row.LastDate is { } last ? $"..{Day(last)}" : "") : ""),
        new("kickoff", row => row.Kickoff),
        new("opponent", row => row.Opponent),
        new("venue", row => Word(row.Venue)),
        new("competition", row => row.Competition),
        new("round", row => row.Round),
        new("importance", row => Word(row.Importance)),
        new("status", row => Sentences.Say($"status.{row.Status}")),
    ]);

    public static IReadOnlyList<MatchRow> Of(Season season) =>
    [
        .. season.AllMatches.Select(match => new MatchRow(
            match.Id.Text, match.Day, Time(match.KickOff), match.Opponent, match.Venue,
            match.Competition, match.Round, match.Importance, match.Status, match.LastDay == match.Day ? null : match.LastDay)),
    ];
}
