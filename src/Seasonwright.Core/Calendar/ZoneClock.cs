using NodaTime;
using NodaTime.Extensions;
using NodaTime.TimeZones;

namespace Seasonwright.Core.Calendar;

/// <summary>How a zone's clock goes over a span of time, for those who carry its changes into files.</summary>
public static class ZoneClock
{
    // Before the first clocks of any zone; stands for "always" where a stretch has no beginning.
    private static readonly DateTime Always = new(1601, 1, 1);

    /// <summary>
    /// The stretches of one unchanged offset that touch a span, in order. The first begins at or before the span's start, and each
    /// later one at the change that ends the one before it.
    /// </summary>
    /// <param name="zone">An IANA zone id.</param>
    /// <exception cref="DateTimeZoneNotFoundException">The zone is not an IANA id.</exception>
    public static IReadOnlyList<ClockStretch> Stretches(string zone, DateTimeOffset first, DateTimeOffset last)
    {
        var clock = DateTimeZoneProviders.Tzdb[zone];
        return [.. clock.GetZoneIntervals(first.ToInstant(), last.ToInstant() + Duration.Epsilon).Select(stretch => Of(clock, stretch))];
    }

    /// <summary>What the zone's clock shows at an instant, and whether it shows that twice because it is put back.</summary>
    /// <exception cref="DateTimeZoneNotFoundException">The zone is not an IANA id.</exception>
    public static (DateTime Local, bool IsTwice) Show(DateTimeOffset instant, string zone)
    {
        var shown = instant.ToInstant().InZone(DateTimeZoneProviders.Tzdb[zone]);
        return (shown.ToDateTimeUnspecified(), shown.Zone.MapLocal(shown.LocalDateTime).Count > 1);
    }

    private static ClockStretch Of(DateTimeZone clock, ZoneInterval stretch)
    {
        var before = stretch.HasStart ? clock.GetUtcOffset(stretch.Start - Duration.Epsilon) : stretch.WallOffset;
        var start = stretch.HasStart && stretch.Start.InUtc().Year > Always.Year ? stretch.Start.WithOffset(before).LocalDateTime.ToDateTimeUnspecified() : Always;
        return new ClockStretch(start, before.ToTimeSpan(), stretch.WallOffset.ToTimeSpan(), stretch.Name, stretch.Savings != Offset.Zero);
    }
}
