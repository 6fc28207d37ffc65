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
        ("part", item.Part ?? ""),
        ("for", item.For ?? ""),
        ("training", item.Training?.ToString() ?? ""),
        ("place", item.Place ?? ""),
        ("provisional", item.Provisional ? "yes" : "no"),
        ("legs", string.Join("; ", (item.Legs ?? ValueList<Leg>.Empty).Select(leg => leg.ToString()))),
        ("note", item.Note ?? ""),
        ("source", item.Source?.ToString() ?? ""),
    ];

    private static IEnumerable<(string Name, string Text)> Of(TestDay test) =>
        [("day", Day(test.Day)), ("part", test.Part ?? ""), ("for", test.For ?? ""), ("source", test.Source?.ToString() ?? "")];

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
