namespace Seasonwright.Web.Host;

/// <summary>A clock that runs as always but on another day: pictures and rehearsals of a date to come.</summary>
/// <param name="day">The day it shows at its start, UTC.</param>
public sealed class DayClock(DateOnly day) : TimeProvider
{
    private readonly TimeSpan shift = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc) - System.GetUtcNow().UtcDateTime.Date;

    public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + shift;
}
