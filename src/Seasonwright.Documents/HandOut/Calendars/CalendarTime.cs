using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>When an entry begins or ends: a day, a time of a zone, of UTC, or of the place where one is (RFC 5545, 3.3.5).</summary>
/// <param name="Clock">What the clock shows, in whole seconds; of a day its midnight.</param>
/// <param name="Zone">An IANA id, or <see cref="Utc"/>; null for a day and for the time of the place where one is.</param>
internal readonly record struct CalendarTime(DateTime Clock, bool IsDay, string? Zone)
{
    public const string Utc = "UTC";

    public static CalendarTime Of(DateOnly day) => new(day.ToDateTime(TimeOnly.MinValue), IsDay: true, null);

    /// <summary>A time on the clock of wherever one is then, as tickets have it.</summary>
    public static CalendarTime OfPlace(DateOnly day, TimeOnly time) => new(Whole(day.ToDateTime(time)), IsDay: false, null);

    /// <summary>A time that the clock shows twice is written in UTC, as readers do not agree which of the two is meant.</summary>
    public static CalendarTime Of(DateTimeOffset instant, string zone)
    {
        var (local, isTwice) = ZoneClock.Show(instant, zone);
        return new(Whole(isTwice ? instant.UtcDateTime : local), IsDay: false, isTwice ? Utc : zone);
    }

    private static DateTime Whole(DateTime time) => new(time.Ticks - time.Ticks % TimeSpan.TicksPerSecond, DateTimeKind.Unspecified);
}
