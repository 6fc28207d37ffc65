using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>The fields in which two states of a match differ.</summary>
internal static class FieldChanges
{
    public static ValueList<FieldChange> Between(Match before, Match after) => Fields(before).Zip(Fields(after))
        .Where(pair => pair.First.Text != pair.Second.Text).Select(pair => new FieldChange(pair.First.Name, pair.First.Text, pair.Second.Text)).ToValueList();

    private static IEnumerable<(string Name, string Text)> Fields(Match match) =>
    [
        ("day", Day(match.Day)),
        ("lastDay", Day(match.LastDay)),
        ("kickOff", match.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? ""),
        ("opponent", match.Opponent ?? ""),
        ("venue", match.Venue?.ToString() ?? ""),
        ("competition", match.Competition ?? ""),
        ("round", match.Round ?? ""),
        ("place", match.Place ?? ""),
        ("status", match.Status.ToString()),
        ("condition", match.Condition is { } condition ? condition.Words ?? $"{condition.On} {condition.Needs}" : ""),
        ("series", match.Series is { } series ? string.Create(CultureInfo.InvariantCulture, $"{series.Name} {series.Game}/{series.BestOf}") : ""),
        ("result", match.Result ?? ""),
        ("source", match.Source?.Id ?? ""),
        ("vanished", match.Source is { Vanished: true } ? "yes" : ""),
    ];

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";
}
