using Seasonwright.Core.Rooms;

namespace Seasonwright.Web.Rooms;

/// <summary>The half hours of a day that are drawn: those in which the room is open on any day, and those in which anybody is in it all the same.</summary>
/// <param name="First">Counted from midnight.</param>
/// <param name="End">The first that is not drawn.</param>
public sealed record RoomClockFace(int First, int End)
{
    /// <summary>So many classes the style has for places on the clock.</summary>
    private const int Least = 4;

    public static RoomClockFace Of(RoomWeek week)
    {
        List<(int From, int To)> spans = [.. week.Room.Open.Select(hours => (Clock.Minute(hours.From), Clock.Minute(hours.To))), .. week.Placed.Select(one => (Clock.Minute(one.At.Start), Math.Min(one.Ask.End(one.At.Start), Clock.Day)))];
        var first = spans.Min(span => span.From) / Clock.HalfHour;
        var end = (spans.Max(span => span.To) + Clock.HalfHour - 1) / Clock.HalfHour;
        return new(Math.Max(0, Math.Min(first, Clock.Day / Clock.HalfHour - Least)), Math.Max(end, first + Least));
    }

    public IEnumerable<int> Halves => Enumerable.Range(First, End - First);

    /// <summary>The style's class for a place on the clock.</summary>
    public string At(int minute) => FormattableString.Invariant($"n{Math.Clamp(minute / Clock.HalfHour - First, 0, End - First - 1)}");

    /// <summary>The style's class for how many half hours it touches.</summary>
    public string Span(int from, int to) => FormattableString.Invariant($"s{Math.Max(1, (to + Clock.HalfHour - 1) / Clock.HalfHour - from / Clock.HalfHour)}");

    public static string Words(int half) => Clock.Time(half * Clock.HalfHour).ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
