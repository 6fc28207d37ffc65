using NodaTime;
using NodaTime.TimeZones;

namespace Seasonwright.Core.Calendar;

/// <summary>A kick-off on the venue's clock. A local time that a clock change skips or repeats resolves leniently: forward out of a gap, the earlier of two.</summary>
/// <param name="Day">The venue's date.</param>
/// <param name="Time">The venue's wall clock.</param>
/// <param name="Zone">An IANA zone id, for instance Europe/Berlin.</param>
public readonly record struct KickOff(DateOnly Day, TimeOnly Time, string Zone)
{
    public static bool IsZone(string id) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) is not null;

    /// <exception cref="DateTimeZoneNotFoundException">The zone is not an IANA id.</exception>
    public DateTimeOffset ToInstant()
    {
        var local = LocalDateTime.FromDateTime(Day.ToDateTime(Time));
        return DateTimeZoneProviders.Tzdb[Zone].AtLeniently(local).ToDateTimeOffset();
    }
}
