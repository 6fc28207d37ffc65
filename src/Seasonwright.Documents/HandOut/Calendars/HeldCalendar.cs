using System.Collections.Immutable;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>A calendar of a season that was handed out before.</summary>
internal sealed class HeldCalendar : CalendarRevisions
{
    // No entry is changed so often; a number near the end of numbers could not rise.
    private const int HighestSequence = 1_000_000;

    private readonly ImmutableArray<RevisedEntry> held;

    private HeldCalendar(IEnumerable<RevisedEntry> held) => this.held = [.. held];

    /// <summary>Null where the text is no calendar of this season that was written here.</summary>
    public static HeldCalendar? Read(string text, SeasonId season)
    {
        try
        {
            return Calendar.Load(text) is { } calendar && calendar.ProductId == SeasonCalendar.Product
                && calendar.Properties.Get<object>("UID")?.ToString() == CalendarUid.Of(season)
                    ? new HeldCalendar(calendar.Events.Select(Entry).OfType<RevisedEntry>().DistinctBy(entry => entry.Entry.Uid, StringComparer.Ordinal))
                    : null;
        }
        // The library says in many ways that it cannot read a text.
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            return null;
        }
    }

    internal override IEnumerable<RevisedEntry> Revise(Season season, Func<Season, IReadOnlyList<PlannedEntry>> plan)
    {
        var now = plan(season).Where(planned => !planned.IsTaken).Select(planned => planned.Entry).ToDictionary(entry => entry.Uid, StringComparer.Ordinal);
        var before = held.ToDictionary(entry => entry.Entry.Uid, StringComparer.Ordinal);
        return now.Values.Select(entry => before.TryGetValue(entry.Uid, out var old) ? Next(old, entry) : new RevisedEntry(entry, 0))
            .Concat(held.Where(old => !now.ContainsKey(old.Entry.Uid)).Select(old => Next(old, old.Entry.CalledOff())));
    }

    private static RevisedEntry Next(RevisedEntry old, CalendarEntry entry) => entry == old.Entry ? old : new(entry, old.Sequence + 1);

    // A file that others may have written to: whatever it holds is made fit to be written again.
    private static RevisedEntry? Entry(CalendarEvent entry) => entry is { Uid: { } uid, Start: { } start }
        ? new(new CalendarEntry(
            PlainText.Clean(uid), Time(start), entry.End is { } end ? Time(end) : null, PlainText.Clean(entry.Summary ?? ""), Status(entry.Status), entry.Transparency == TransparencyType.Transparent,
            entry.Location is { } place ? PlainText.Clean(place) : null,
            entry.Description is { } text ? string.Join('\n', text.Split('\n').Select(PlainText.Clean)) : null,
            entry.Categories.Select(PlainText.Clean).ToValueList(),
            entry.Properties.Get<object>("COLOR")?.ToString() is { } colour && colour.All(char.IsAsciiLetter) ? colour : null), Math.Clamp(entry.Sequence, 0, HighestSequence))
        : null;

    private static CalendarTime Time(CalDateTime time) => new(
        DateTime.SpecifyKind(time.Value, DateTimeKind.Unspecified), !time.HasTime, time.TzId is { } zone && (zone == CalendarTime.Utc || KickOff.IsZone(zone)) ? zone : null);

    private static EntryStatus Status(string? status) => status switch
    {
        "CANCELLED" => EntryStatus.Cancelled,
        "TENTATIVE" => EntryStatus.Tentative,
        _ => EntryStatus.Confirmed,
    };
}
