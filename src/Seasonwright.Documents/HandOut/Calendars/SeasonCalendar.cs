using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>
/// A season as a calendar file: iCalendar (RFC 5545) with the calendar's name and colours of RFC 7986. Matches with a kick-off are
/// held free for two hours of the venue's clock; everything else goes by whole days, but for journeys whose times are known.
/// </summary>
public static class SeasonCalendar
{
    internal const string Product = "-//Seasonwright//Season calendar//EN";

    /// <summary>The same season, setup, edition, choices and revisions give the same text.</summary>
    /// <param name="revisions">What others may hold already of this calendar.</param>
    public static string Write(Season season, Setup setup, Edition edition, CalendarChoices choices, CalendarRevisions revisions)
    {
        var entries = revisions.Revise(season, held => CalendarEntries.Of(held, setup, choices))
            .OrderBy(entry => entry.Entry.Start.Clock).ThenBy(entry => entry.Entry.Uid, StringComparer.Ordinal).ToList();
        var name = SeasonName.Of(season, setup);
        var stamp = new CalDateTime(edition.Day.Year, edition.Day.Month, edition.Day.Day, 0, 0, 0, CalendarTime.Utc);
        var title = edition.IsDraft ? Say("calendar.name.draft", name) : name;
        var calendar = new Calendar { ProductId = Product, Version = "2.0" };
        calendar.AddProperty("CALSCALE", "GREGORIAN");
        calendar.AddProperty("NAME", title);
        // What programs older than RFC 7986 read. Common practice, no source.
        calendar.AddProperty("X-WR-CALNAME", title);
        calendar.AddProperty("DESCRIPTION", PlainText.Clean(Say("calendar.about", name, edition.Words(setup.Locale))));
        calendar.AddProperty("UID", CalendarUid.Of(season.Id));
        foreach (var zone in ZoneBlocks.Of(entries.SelectMany(entry => new[] { entry.Entry.Start, entry.Entry.End ?? entry.Entry.Start })))
            calendar.AddTimeZone(zone);
        foreach (var entry in entries) calendar.Events.Add(Event(entry, stamp));
        return FoldedLines.Of(new CalendarSerializer().SerializeToString(calendar)!);
    }

    private static CalendarEvent Event(RevisedEntry revised, CalDateTime stamp)
    {
        var entry = revised.Entry;
        var written = new CalendarEvent
        {
            Uid = entry.Uid,
            DtStamp = stamp,
            Sequence = revised.Sequence,
            Start = Time(entry.Start),
            Summary = entry.Summary,
            Status = entry.Status switch { EntryStatus.Cancelled => "CANCELLED", EntryStatus.Tentative => "TENTATIVE", _ => "CONFIRMED" },
            Transparency = entry.IsFree ? TransparencyType.Transparent : TransparencyType.Opaque,
            Categories = [.. entry.Categories],
        };
        if (entry.End is { } end) written.End = Time(end);
        if (entry.Place is { } place) written.Location = place;
        if (entry.Description is { } description) written.Description = description;
        if (entry.Colour is { } colour) written.AddProperty("COLOR", colour);
        return written;
    }

    private static CalDateTime Time(CalendarTime time) => time.IsDay
        ? new(DateOnly.FromDateTime(time.Clock))
        : new(DateOnly.FromDateTime(time.Clock), TimeOnly.FromDateTime(time.Clock), time.Zone);
}
