using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A session that has a place in a room's week.</summary>
/// <param name="InRoom">Athletes in the room in the fullest half hour of the session.</param>
/// <param name="Teams">Sessions at one time where they are most: each needs a coach.</param>
/// <param name="Wished">Where it would best have been; null where it is there, or nobody said.</param>
internal sealed record RoomRow(string Session, string Team, string Name, DateOnly Day, string Start, string End, int Athletes, int InRoom, int Teams, bool IsLocked, string? Wished)
{
    /// <summary>A day's sessions stand together under its date.</summary>
    /// <param name="rows">In the order of the table.</param>
    public static Table<RoomRow> Table(IReadOnlyList<RoomRow> rows, Room room) => new(
    [
        new("day", row => rows.First(other => other.Day == row.Day) == row ? row.Day.ToString("ddd d MMM", CultureInfo.InvariantCulture) : ""),
        new("time", row => $"{row.Start}-{row.End}"),
        new("team", row => row.Team),
        new("session", row => row.Name),
        new("athletes", row => Number(row.Athletes), IsNumber: true),
        new("in the room", row => string.Create(CultureInfo.InvariantCulture, $"{row.InRoom} of {room.Places}"), IsNumber: true),
        new("coaches", row => string.Create(CultureInfo.InvariantCulture, $"{row.Teams} of {room.Coaches}"), IsNumber: true),
        new("", row => row.IsLocked ? Texts.Say("room.locked") : row.Wished is { } wished ? Texts.Say("room.wished", wished) : ""),
    ]);

    public static IReadOnlyList<RoomRow> Of(RoomWeek week)
    {
        var use = RoomUse.Of(week);
        return [.. week.Placed.OrderBy(one => (one.At.Day, one.At.Start)).Select(one =>
        {
            var mine = use.Where(half => half.Sessions.Contains(one.Ask.Id)).ToList();
            var isThere = (one.Ask.Day ?? one.At.Day) == one.At.Day && (one.Ask.Start ?? one.At.Start) == one.At.Start;
            return new RoomRow(one.Ask.Id.Text, one.Team.Name, one.Ask.Name, one.At.Day, Time(one.At.Start), Time(Clock.Time(Math.Min(one.Ask.End(one.At.Start), Clock.Day - 1))), one.Ask.Athletes,
                mine.Max(half => half.Athletes), mine.Max(half => half.Sessions.Count), one.At.IsLocked, isThere ? null : Words(one.Ask.Day, one.Ask.Start));
        })];
    }

    /// <summary>"Tue 18:00", or the half that was said.</summary>
    private static string Words(DateOnly? day, TimeOnly? start) => string.Join(' ', new[] { day?.ToString("ddd", CultureInfo.InvariantCulture), Time(start) }.OfType<string>());
}
