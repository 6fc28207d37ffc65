using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>
/// The clocks of a calendar's zones (VTIMEZONE, RFC 5545, 3.6.5), every change written out over the time the calendar speaks of:
/// a rule that goes on for ever would be wrong where a zone follows none.
/// </summary>
internal static class ZoneBlocks
{
    public static IEnumerable<VTimeZone> Of(IEnumerable<CalendarTime> times) =>
        times.Where(time => time.Zone is not (null or CalendarTime.Utc))
            .GroupBy(time => time.Zone!, time => time.Clock, StringComparer.Ordinal)
            .OrderBy(zone => zone.Key, StringComparer.Ordinal)
            .Select(zone => Block(zone.Key, zone.Min(), zone.Max()));

    private static VTimeZone Block(string zone, DateTime first, DateTime last)
    {
        // Whole years, so that readers find the winter's clock beside the summer's.
        var stretches = ZoneClock.Stretches(zone, new DateTimeOffset(first.Year, 1, 1, 0, 0, 0, TimeSpan.Zero), new DateTimeOffset(last.Year, 12, 31, 23, 59, 0, TimeSpan.Zero));
        var block = new VTimeZone { TzId = zone };
        foreach (var stretch in stretches)
            block.AddChild(new VTimeZoneInfo(stretch.IsSummer ? Components.Daylight : Components.Standard)
            {
                Start = new CalDateTime(DateTime.SpecifyKind(stretch.From, DateTimeKind.Unspecified)),
                OffsetFrom = new UtcOffset(stretch.Before),
                OffsetTo = new UtcOffset(stretch.Offset),
                TimeZoneName = stretch.Name,
            });
        return block;
    }
}
