using System.Collections.Frozen;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Web.Gestures;

/// <summary>What the page calls the fields of its forms, so that a refusal names the one to mend.</summary>
internal static class FormFields
{
    // The labels of the panels, by the last part of a field's name.
    private static readonly FrozenDictionary<string, string> Labels = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["day"] = "match.day",
        ["lastDay"] = "match.last-day",
        ["kickOff"] = "match.kick-off",
        ["opponent"] = "match.opponent",
        ["venue"] = "match.venue",
        ["competition"] = "match.competition",
        ["round"] = "match.round-label",
        ["place"] = "match.place",
        ["importance"] = "match.importance",
        ["status"] = "match.status",
        ["on"] = "match.waits",
        ["note"] = "match.note",
        ["reason"] = "check.reason",
        ["releaser"] = "check.releaser",
        ["title"] = "event.title",
        ["kind"] = "event.kind",
        ["days"] = "season.dates",
        ["first"] = "event.first",
        ["last"] = "event.last",
        ["part"] = "event.part",
        ["for"] = "event.for",
        ["training"] = "event.training",
        ["battery"] = "test.battery",
        ["text"] = "note.text",
        ["load"] = "panel.load",
        ["emphasis"] = "panel.emphasis",
        ["count"] = "panel.practices",
        ["minutes"] = "panel.minutes",
        ["rpe"] = "team.match-rpe",
        ["friendlyRpe"] = "team.friendly-rpe",
        ["measure"] = "goal.measure",
        ["from"] = "goal.from",
        ["to"] = "goal.to",
        ["by"] = "goal.by-when",
        ["firstDay"] = "season.first-day",
        ["weeks"] = "season.weeks",
        ["weekStart"] = "season.week-start",
        ["zone"] = "team.zone",
        ["name"] = "team.name",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The field's name and how to mend it.</summary>
    public static string Sentence(UnreadField field)
    {
        if (field.Path is not { } path) return Words.Say("gesture.unreadable");
        var label = Words.Say(Labels.GetValueOrDefault(path.Split('.')[^1], "gesture.some-field"));
        return field.Finding is { } finding ? Words.Say("gesture.field", label, finding) : Words.Say("gesture.field-empty", label);
    }
}
