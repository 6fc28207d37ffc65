using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>The fields in which two states of an event or test day differ.</summary>
internal static class EntryFields
{
    public static ValueList<FieldChange> Between(Event before, Event after) => Differing(Of(before).Zip(Of(after)));

    public static ValueList<FieldChange> Between(TestDay before, TestDay after) => Differing(Of(before).Zip(Of(after)));

    private static ValueList<FieldChange> Differing(IEnumerable<((string Name, string Text) Before, (string Name, string Text) After)> fields) => fields
        .Where(field => field.Before.Text != field.After.Text).Select(field => new FieldChange(field.Before.Name, field.Before.Text, field.After.Text)).ToValueList();

    private static IEnumerable<(string Name, string Text)> Of(Event item) =>
    [
        ("day", Day(item.Days.First)),
        ("lastDay", Day(item.Days.Last)),
        ("kind", item.Kind.ToString()),
        ("part", item.Part ?? ""),
        ("for", item.For ?? ""),
        ("training", item.Training?.ToString() ?? ""),
        ("place", item.Place ?? ""),
        ("provisional", item.Provisional ? "yes" : "no"),
        ("legs", string.Join("; ", (item.Legs ?? ValueList<Leg>.Empty).Select(Text))),
        ("note", item.Note ?? ""),
        .. Of(item.Source),
    ];

    private static IEnumerable<(string Name, string Text)> Of(TestDay test) =>
        [("day", Day(test.Day)), ("part", test.Part ?? ""), ("for", test.For ?? ""), .. Of(test.Source)];

    private static IEnumerable<(string Name, string Text)> Of(EventSource? source) => [("source", source?.List ?? ""), ("vanished", source?.Vanished == true ? "yes" : "no")];

    /// <summary>"2026-12-08 14:00 Harbour Vale - 15:40 Skagrund airport"; what is not known is left out.</summary>
    private static string Text(Leg leg) =>
        $"{Text(Day(leg.Day), Time(leg.Departs), leg.From)} - {Text(leg.ArrivalDay is { } day ? Day(day) : null, Time(leg.Arrives), leg.To, leg.ZoneShift is { } hours ? string.Create(CultureInfo.InvariantCulture, $"({hours:+0.##;-0.##;+0} h)") : null)}".TrimEnd(' ', '-');

    private static string Text(params string?[] parts) => string.Join(' ', parts.OfType<string>());

    private static string? Time(TimeOnly? time) => time?.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
