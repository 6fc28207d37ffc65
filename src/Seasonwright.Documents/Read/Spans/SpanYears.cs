using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>Settles the year of a span, and the order of its figures, from what is around it.</summary>
internal static class SpanYears
{
    // Days; what lies further from a season than this is not meant for it.
    private const int FarOff = 200;

    /// <summary>The years a season touches, with one more on each side, as far as they are years.</summary>
    public static IEnumerable<int> Around(DaySpan season) =>
        Enumerable.Range(season.First.Year - 1, season.Last.Year - season.First.Year + 3).Where(DayPieces.IsYear);

    /// <summary>
    /// Reads a span for a season. Without a year it lies in the season; where it can lie there twice, or not at all, both
    /// years nearest to it are the choices.
    /// </summary>
    public static SpanReading Read(FoundSpan span, DaySpan? season, DayOrder? order)
    {
        if (span.Form.Order != FigureOrder.Either || order is not null) return InYear(span, season, order ?? DayOrder.DayFirst);
        var (one, other) = (InYear(span, season, DayOrder.DayFirst), InYear(span, season, DayOrder.MonthFirst));
        if ((one.From, one.To) == (other.From, other.To)) return one;
        if (span.Form.HasWeekday && (one.Doubt == SpanDoubt.None) != (other.Doubt == SpanDoubt.None)) return one.Doubt == SpanDoubt.None ? one : other;
        return SpanReading.Of(null, null, SpanDoubt.Order, new[] { one, other }.SelectMany(Readings)) with { Part = one.Part };
    }

    /// <summary>How many days a span lies from a season, 0 inside.</summary>
    public static int Distance(SpanReading read, DaySpan season)
    {
        var (from, to) = (read.From ?? read.To, read.To ?? read.From);
        if (from is not { } first || to is not { } last) return int.MaxValue;
        return Math.Max(0, Math.Max(first.DayNumber - season.Last.DayNumber, season.First.DayNumber - last.DayNumber));
    }

    private static SpanReading InYear(FoundSpan span, DaySpan? season, DayOrder order)
    {
        if (span.Form.Year is { } year) return span.In(year, order);
        if (season is not { } days) return span.In(2000, order) is { Doubt: SpanDoubt.Impossible or SpanDoubt.Unreadable } never ? never : SpanReading.No(SpanDoubt.Year);
        var readings = Around(days).Select(y => span.In(y, order)).Where(read => read.From is not null || read.To is not null).ToList();
        if (readings.Count == 0) return span.In(days.First.Year, order);
        var inside = readings.Where(read => Distance(read, days) == 0).ToList();
        if (inside.Count > 1 && span.Form.HasWeekday && inside.Where(read => read.Doubt != SpanDoubt.Weekday).ToList() is { Count: 1 } fitting) inside = fitting;
        // A span over the season's edge is this season's when most of it lies inside.
        if (inside.Count > 1 && inside.Where(read => read.Whole is { } whole && whole.SharedDays(days) * 2 > whole.Length).ToList() is { Count: 1 } most) inside = most;
        if (inside.Count == 1) return inside[0];
        var nearest = inside.Count > 1 ? inside : readings.Where(read => Distance(read, days) <= FarOff).OrderBy(read => Distance(read, days)).Take(2).ToList();
        if (nearest.Count == 0) return span.In(days.First.Year, order) is { Doubt: SpanDoubt.Impossible } no ? no : readings[0];
        return SpanReading.Of(null, null, SpanDoubt.Year, nearest.SelectMany(Readings)) with { Part = readings[0].Part };
    }

    private static IEnumerable<DaySpan> Readings(SpanReading read) => read.Days is { } days ? [days] : read.Choices;
}
