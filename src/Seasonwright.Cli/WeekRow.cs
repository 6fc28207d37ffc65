using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A week of a season as <c>show</c> gives it.</summary>
/// <param name="Month">The month its first day lies in.</param>
/// <param name="Matches">Those not called off; one without a certain day counts where its first possible day lies.</param>
/// <param name="Phase">The coach's name for it, or its kind's.</param>
/// <param name="Block">The coach's name for it, or its kind's.</param>
/// <param name="Load">The target in AU.</param>
/// <param name="Events">Titles of the events that touch the week.</param>
internal sealed record WeekRow(
    int Week, string IsoWeek, DateOnly From, DateOnly To, string Month, int Matches, string? Phase, string? Block, WeekKind? Kind, int? Load, IReadOnlyList<string> Events)
{
    public static Table<WeekRow> Table { get; } = new(
    [
        new("week", row => Number(row.Week), IsNumber: true),
        new("iso_week", row => row.IsoWeek),
        new("from", row => Day(row.From)),
        new("to", row => Day(row.To)),
        new("month", row => row.From.ToString("MMM", CultureInfo.InvariantCulture)),
        new("matches", row => row.Matches == 0 ? "" : Number(row.Matches), IsNumber: true),
        new("phase", row => row.Phase),
        new("block", row => row.Block),
        new("kind", row => row.Kind is { } kind ? Sentences.Say($"kind.{kind}") : ""),
        new("load", row => row.Load is { } au ? Number(au) : "", IsNumber: true),
        new("events", row => string.Join("; ", row.Events)),
    ]);

    public static IReadOnlyList<WeekRow> Of(Season season) =>
    [
        .. season.Weeks.Select(week => new WeekRow(
            week.Number, week.IsoWeek.ToString(), week.Days.First, week.Days.Last,
            week.Days.First.ToString("yyyy-MM", CultureInfo.InvariantCulture),
            season.MatchesIn(week).Count(match => !match.IsOff),
            season.PhaseOf(week) is { Phase: var phase } ? phase.Name ?? Sentences.Say($"phase.{phase.Kind}") : null,
            season.BlockOf(week) is { Block: var block } ? block.Name ?? Sentences.Say($"block.{block.Kind}") : null,
            season.KindOf(week.Id), season.TargetOf(week.Id)?.Au,
            [.. season.Events.Where(item => item.Days.Overlaps(week.Days)).Select(item => item.Title)])),
    ];
}
