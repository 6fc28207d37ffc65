using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>
/// All dates of a list, decided together: what the whole column shows decides each cell. Day or month first is asked when no
/// date of the list tells; a year that is not written comes from the other dates, from a title or the season planned, or is asked.
/// </summary>
/// <param name="Readings">In the order of the dates given.</param>
/// <param name="Order">The order of day and month, null while it is asked.</param>
/// <param name="OrderLines">Lines that decided it, empty when none had to.</param>
/// <param name="Season">The years filled in where none are written; null when all are written or they are asked.</param>
public sealed record DateColumn(ValueList<DateReading> Readings, DayOrder? Order, ValueList<int> OrderLines, SeasonYears? Season)
{
    public static DateColumn Read(IReadOnlyList<LineDate> dates, DateHints hints, Asker asker)
    {
        var (order, lines, askOrder) = OrderOf(dates, hints, asker);
        var years = YearFill.Of(dates, order, hints, asker);
        var readings = dates.Select((date, index) => Reading(date, order, askOrder, years.YearOf(index), years.Ask));
        return new(readings.ToValueList(), order, lines, years.Season);
    }

    internal static (DayOrder? Order, ValueList<int> Lines, string? Ask) OrderOf(IReadOnlyList<LineDate> dates, DateHints hints, Asker asker)
    {
        var open = dates.Where(date => date.Written.Days.Any(day => day.Order == WrittenOrder.Open)).ToList();
        var dayFirst = open.Where(date => date.Written.Days.Any(day => Tells(day, DayOrder.DayFirst))).Select(date => date.Line).ToList();
        var monthFirst = open.Where(date => date.Written.Days.Any(day => Tells(day, DayOrder.MonthFirst))).Select(date => date.Line).ToList();
        if (dayFirst.Count > 0 && monthFirst.Count == 0) return (DayOrder.DayFirst, dayFirst.ToValueList(), null);
        if (monthFirst.Count > 0 && dayFirst.Count == 0) return (DayOrder.MonthFirst, monthFirst.ToValueList(), null);
        var swappable = open.Where(date => date.Written.Days.Any(day => day.IsSwappable)).ToList();
        if (swappable.Count == 0) return (DayOrder.DayFirst, ValueList<int>.Empty, null);
        var asked = asker.Ask("order", "", swappable.Select(date => date.Line),
            [Choice("day-first", swappable, DayOrder.DayFirst), Choice("month-first", swappable, DayOrder.MonthFirst)],
            [swappable.Count], (hints.Usual ?? ByTheirRow(dates)) switch { DayOrder.DayFirst => "day-first", DayOrder.MonthFirst => "month-first", _ => null });
        return asked.Answer switch
        {
            "day-first" => (DayOrder.DayFirst, ValueList<int>.Empty, null),
            "month-first" => (DayOrder.MonthFirst, ValueList<int>.Empty, null),
            _ => (null, ValueList<int>.Empty, asked.Id),
        };
    }

    // The order under which the dates run on from row to row, over one New Year at most, where the other turns back more often. Only ever offered.
    private static DayOrder? ByTheirRow(IReadOnlyList<LineDate> dates)
    {
        int Backs(DayOrder order)
        {
            var days = dates.Where(date => date.Written.Kind is not WrittenKind.Weeks).Select(date => YearFill.OfYear(date.Written, order)).ToList();
            return days.Zip(days.Skip(1)).Count(pair => pair.Second < pair.First);
        }
        var (dayFirst, monthFirst) = (Backs(DayOrder.DayFirst), Backs(DayOrder.MonthFirst));
        return dates.Count < 3 || dayFirst == monthFirst ? null : dayFirst <= 1 && dayFirst < monthFirst ? DayOrder.DayFirst : monthFirst <= 1 && monthFirst < dayFirst ? DayOrder.MonthFirst : null;
    }

    // A number above 12 is a day; a weekday in front that only one order fits tells too.
    private static bool Tells(WrittenDay day, DayOrder order)
    {
        if (day.Order != WrittenOrder.Open) return false;
        if (!day.IsSwappable) return day.First != day.Second && (order == DayOrder.DayFirst ? day.First > 12 : day.Second > 12);
        if (day.Weekday is not { } weekday || day.Year is not { } year) return false;
        var other = order == DayOrder.DayFirst ? DayOrder.MonthFirst : DayOrder.DayFirst;
        return day.In(year, order)?.DayOfWeek == weekday && day.In(year, other)?.DayOfWeek != weekday;
    }

    private static AnswerOption Choice(string id, List<LineDate> dates, DayOrder order)
    {
        var days = dates.SelectMany(date => date.Written.Days).Where(day => day.Year is not null).Select(day => day.In(day.Year!.Value, order)).OfType<DateOnly>().ToList();
        return days.Count == 0 ? Asker.Option("order", id) : Asker.Option("order", $"{id}.days", days.Min(), days.Max()) with { Id = id };
    }

    private static DateReading Reading(LineDate date, DayOrder? order, string? askOrder, int? year, string? askYear)
    {
        var written = date.Written;
        if (order is null && written.Days.Any(day => day.IsSwappable)) return new(date.Line, written, null, null, askOrder);
        if (written.LacksYear && year is null) return new(date.Line, written, null, null, askYear);
        var (first, last) = written.Kind switch
        {
            WrittenKind.Weeks => Weeks(written, written.WeekYear ?? year!.Value),
            WrittenKind.Month when Start(written, order, year) is { } start => (start, start.AddMonths(1).AddDays(-1)),
            WrittenKind.WeekOf when Start(written, order, year) is { } start => (IsoWeek.Of(start).Monday, IsoWeek.Of(start).Days.Last),
            _ => (Start(written, order, year), End(written, order, year)),
        };
        if (first is null || written.Last is not null && last is null || !IsPossible(first.Value)) (first, last) = (null, null);
        return new(date.Line, written, first, last == first ? null : last, first is not null && written.LacksYear ? askYear : null);
    }

    private static DateOnly? Start(WrittenDate written, DayOrder? order, int? year)
    {
        var day = written.First;
        if (day.Year is { } own) return day.In(own, order ?? DayOrder.DayFirst);
        if (written.Last is not { Year: { } lastYear } last) return year is { } filled ? day.In(filled, order ?? DayOrder.DayFirst) : null;
        // "20 Dec - 2 Jan 2027" starts in the year before.
        return day.In(day.MonthOf(order ?? DayOrder.DayFirst) > last.MonthOf(order ?? DayOrder.DayFirst) ? lastYear - 1 : lastYear, order ?? DayOrder.DayFirst);
    }

    private static DateOnly? End(WrittenDate written, DayOrder? order, int? year)
    {
        if (written.Last is not { } last) return null;
        if (last.Year is { } own) return last.In(own, order ?? DayOrder.DayFirst);
        var start = written.First.Year ?? year;
        if (start is null) return null;
        var turns = last.MonthOf(order ?? DayOrder.DayFirst) < written.First.MonthOf(order ?? DayOrder.DayFirst);
        return last.In(turns ? start.Value + 1 : start.Value, order ?? DayOrder.DayFirst);
    }

    private static (DateOnly?, DateOnly?) Weeks(WrittenDate written, int year)
    {
        var (first, last) = (written.Week!.Value, written.LastWeek ?? written.Week.Value);
        if (first > IsoWeek.WeeksIn(year)) return (null, null);
        var lastYear = last < first ? year + 1 : year;
        return last > IsoWeek.WeeksIn(lastYear) ? (null, null) : (new IsoWeek(year, first).Monday, new IsoWeek(lastYear, last).Days.Last);
    }

    /// <summary>Days a season can hold (Core takes 1950 to 2149).</summary>
    public static bool IsPossible(DateOnly day) => day.Year is >= 1950 and <= 2149;
}

/// <summary>What is known about a list's dates besides the list.</summary>
/// <param name="Usual">The team's usual order: offered where it must be asked, never taken on its own.</param>
/// <param name="Named">The years a title of the list names.</param>
/// <param name="Season">The season's days, if it has been started: offered where no year is written.</param>
/// <param name="Today">Chooses among several years that the weekdays fit; null does without.</param>
public sealed record DateHints(DayOrder? Usual = null, SeasonYears? Named = null, DaySpan? Season = null, DateOnly? Today = null);
