using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>How a span is written, before a year and the order of figures are settled.</summary>
internal abstract record SpanForm
{
    /// <summary>The year of its first day where one is written.</summary>
    public abstract int? Year { get; }

    /// <summary>What its figures say about the order of day and month.</summary>
    public virtual FigureOrder Order => FigureOrder.Told;

    /// <summary>Days of the week written beside dates: they can tell the year.</summary>
    public virtual bool HasWeekday => false;

    /// <summary>The order its own figures show, else the one given.</summary>
    protected DayOrder Settled(DayOrder order) => Order switch { FigureOrder.DayFirst => DayOrder.DayFirst, FigureOrder.MonthFirst => DayOrder.MonthFirst, _ => order };

    /// <summary>The same for deciding a whole column; its place in a text is left open.</summary>
    public abstract WrittenDate Written { get; }

    /// <summary>Reads it with its first day in a year; a written year wins.</summary>
    public abstract SpanReading In(int year, DayOrder order);
}

/// <summary>One day, or from one day to another.</summary>
internal sealed record DaysForm(DayPieces First, DayPieces? Last) : SpanForm
{
    // A wrap over New Year that makes a span longer than this is rather an end before its start.
    private const int LongestWrap = 183;

    public override int? Year => First.Year ?? (Last?.Year is { } year ? Wraps(First, Last) ? year - 1 : year : null);

    public override FigureOrder Order => Stronger(First.Order, Last?.Order ?? FigureOrder.Told);

    public override bool HasWeekday => First.Weekday is not null || Last?.Weekday is not null;

    public override WrittenDate Written => Last is null ? new(0, 0, WrittenKind.Day, First.Written)
        : new(0, 0, WrittenKind.Span, (First with { Month = First.Month ?? Last.Month }).Written, (Last with { Month = Last.Month ?? First.Month }).Written);

    public override SpanReading In(int year, DayOrder order)
    {
        var settled = Settled(order);
        var first = First.In(settled);
        var last = (Last ?? First).In(settled);
        (first, last) = (first with { Month = first.Month ?? last.Month }, last with { Month = last.Month ?? first.Month });
        if (first.Day is null || last.Day is null) return OfWeekdays(first, last, year);

        var firstYear = Year ?? year;
        var lastYear = last.Year ?? firstYear + (Last is not null && Wraps(first, last) ? 1 : 0);
        return (first.On(firstYear), last.On(lastYear)) switch
        {
            ({ } from, { } to) => Checked(from, to, first.Weekday, last.Weekday),
            var (from, to) => SpanReading.Of(from, to, SpanDoubt.Impossible),
        };
    }

    internal static FigureOrder Stronger(FigureOrder one, FigureOrder other) => (FigureOrder)Math.Max((int)one, (int)other);

    internal static SpanReading Checked(DateOnly from, DateOnly to, DayOfWeek? firstIs, DayOfWeek? lastIs)
    {
        if (to < from)
            return SpanReading.Of(from, to, SpanDoubt.Backward, new DaySpan(to, from), DaySpan.Of(from));
        var (shiftFirst, shiftLast) = (Shift(from, firstIs), Shift(to, lastIs));
        if (shiftFirst != 0 || shiftLast != 0)
        {
            // One day written twice moves as a whole; otherwise each end goes to the day of the week it names.
            DaySpan? moved = from.AddDays(shiftFirst) <= to.AddDays(shiftLast) ? new DaySpan(from.AddDays(shiftFirst), to.AddDays(shiftLast)) : null;
            return SpanReading.Of(from, to, SpanDoubt.Weekday, new[] { moved, new DaySpan(from, to) }.OfType<DaySpan>());
        }
        return to.DayNumber - from.DayNumber > 366 ? SpanReading.Of(from, to, SpanDoubt.Long, new DaySpan(from, to)) : SpanReading.Clear(from, to);
    }

    /// <summary>Days to the nearest day of that name, -3 to 3.</summary>
    private static int Shift(DateOnly day, DayOfWeek? name)
    {
        if (name is not { } written) return 0;
        var ahead = ((int)written - (int)day.DayOfWeek + 7) % 7;
        return ahead > 3 ? ahead - 7 : ahead;
    }

    private static bool Wraps(DayPieces first, DayPieces last)
    {
        if (first.Month is not { } m || last.Month is not { } n || first.InYear <= last.InYear) return false;
        return (n + 12 - m) * 30 + (last.Day ?? 0) - (first.Day ?? 0) <= LongestWrap;
    }

    // "Fri - Sun 23 Aug", "Fri 21 Aug - Sun": the day without a date lies in the same seven days.
    private static SpanReading OfWeekdays(DayPieces first, DayPieces last, int year)
    {
        if (last.Day is not null && first.Weekday is { } start && last.On(last.Year ?? year) is { } to)
        {
            var back = ((int)to.DayOfWeek - (int)start + 7) % 7;
            return Checked(to.AddDays(-back), to, null, last.Weekday);
        }
        if (first.Day is not null && last.Weekday is { } end && first.On(first.Year ?? year) is { } from)
        {
            var ahead = ((int)end - (int)from.DayOfWeek + 7) % 7;
            return Checked(from, from.AddDays(ahead), first.Weekday, null);
        }
        return SpanReading.No(first.Day is null && last.Day is null ? SpanDoubt.Unreadable : SpanDoubt.Impossible);
    }
}

/// <summary>Calendar weeks, both inside: "KW 42", "KW 49-50", "week 43".</summary>
/// <param name="ByCalendar">The word means the calendar's weeks (KW); an English "week" may be the season's.</param>
internal sealed record WeeksForm(int First, int Last, int? WrittenYear, bool ByCalendar) : SpanForm
{
    public override int? Year => WrittenYear;

    public override WrittenDate Written => new(0, 0, WrittenKind.Weeks, Week: First, LastWeek: Last, WeekYear: WrittenYear);

    public override SpanReading In(int year, DayOrder order)
    {
        var firstYear = WrittenYear ?? year;
        var lastYear = Last < First ? firstYear + 1 : firstYear;
        if (!DayPieces.IsYear(firstYear) || First < 1 || Last < 1 || First > IsoWeek.WeeksIn(firstYear) || Last > IsoWeek.WeeksIn(lastYear)) return SpanReading.No(SpanDoubt.Impossible);
        var days = new DaySpan(new IsoWeek(firstYear, First).Days.First, new IsoWeek(lastYear, Last).Days.Last);
        if (days.Length > 183 && Last < First) return SpanReading.Of(days.First, days.Last, SpanDoubt.Backward, days);
        return ByCalendar ? SpanReading.Clear(days.First, days.Last) : SpanReading.Of(days.First, days.Last, SpanDoubt.WeekNumber, days);
    }
}

/// <summary>The week that holds a day: "week of 12 Oct", "w/c 12 Oct"; or its weekend.</summary>
internal sealed record WeekOfForm(DayPieces Day, bool Weekend) : SpanForm
{
    public override int? Year => Day.Year;

    public override FigureOrder Order => Day.Order;

    public override bool HasWeekday => Day.Weekday is not null;

    public override WrittenDate Written => new(0, 0, WrittenKind.WeekOf, Day.Written);

    public override SpanReading In(int year, DayOrder order)
    {
        var read = new DaysForm(Day, null).In(year, order);
        if (read.Doubt != SpanDoubt.None || read.From is not { } day) return read;
        var week = IsoWeek.Of(day);
        return Weekend ? SpanReading.Clear(week.Days.Last.AddDays(-1), week.Days.Last) : SpanReading.Clear(week.Days.First, week.Days.Last);
    }
}

/// <summary>A length from a day on: "3 March, two weeks".</summary>
internal sealed record LengthForm(DayPieces First, int Days) : SpanForm
{
    public override int? Year => First.Year;

    public override FigureOrder Order => First.Order;

    public override bool HasWeekday => First.Weekday is not null;

    public override WrittenDate Written => new(0, 0, WrittenKind.Day, First.Written);

    public override SpanReading In(int year, DayOrder order)
    {
        var read = new DaysForm(First, null).In(year, order);
        if (read.Doubt != SpanDoubt.None || read.From is not { } from) return read;
        return SpanReading.Clear(from, from.AddDays(Days - 1));
    }
}

/// <summary>Whole months, or a third of one: "May", "mid-June", "May - June".</summary>
/// <param name="Third">1 early, 2 mid, 3 late; null for all of it.</param>
internal sealed record MonthsForm(int First, int Last, int? WrittenYear, int? Third) : SpanForm
{
    public override int? Year => WrittenYear;

    public override WrittenDate Written => new(0, 0, WrittenKind.Month, new WrittenDay(null, First, WrittenYear, WrittenOrder.Known));

    public override SpanReading In(int year, DayOrder order)
    {
        if (Whole(year) is not { } days) return SpanReading.No(SpanDoubt.Impossible);
        if (Third is { } third)
            days = new DaySpan(days.First.AddDays((third - 1) * 10), third == 3 ? days.Last : days.First.AddDays(third * 10 - 1));
        return SpanReading.Of(days.First, days.Last, SpanDoubt.WholeMonth, days);
    }

    /// <summary>From the first to the last day of the months.</summary>
    public DaySpan? Whole(int year)
    {
        var firstYear = WrittenYear ?? year;
        var lastYear = Last < First ? firstYear + 1 : firstYear;
        return !DayPieces.IsYear(firstYear) ? null : new DaySpan(new DateOnly(firstYear, First, 1), new DateOnly(lastYear, Last, DateTime.DaysInMonth(lastYear, Last)));
    }
}

/// <summary>The n-th such day of a month: "second Saturday in May"; 5 is the last.</summary>
internal sealed record NthDayForm(int Nth, DayOfWeek Day, int Month, int? WrittenYear) : SpanForm
{
    public override int? Year => WrittenYear;

    public override WrittenDate Written => new(0, 0, WrittenKind.Month, new WrittenDay(null, Month, WrittenYear, WrittenOrder.Known));

    public override SpanReading In(int year, DayOrder order)
    {
        if (new MonthsForm(Month, Month, WrittenYear, null).Whole(year) is not { } month) return SpanReading.No(SpanDoubt.Impossible);
        var days = month.Days().Where(day => day.DayOfWeek == Day).ToList();
        var day = Nth == 5 ? days[^1] : days[Nth - 1];
        return SpanReading.Clear(day, day);
    }
}

/// <summary>Some days of a run: every Wednesday of a month or of a span, or days that are listed.</summary>
/// <param name="Within">The run; null where none is said.</param>
/// <param name="Some">Not each of them ("every other Wednesday"), and which is not said.</param>
internal sealed record EveryForm(DayOfWeek Weekday, SpanForm? Within, bool Some) : SpanForm
{
    public override int? Year => Within?.Year;

    public override FigureOrder Order => Within?.Order ?? FigureOrder.Told;

    public override WrittenDate Written => Within?.Written ?? new(0, 0, WrittenKind.Month, new WrittenDay(null, 1, 1, WrittenOrder.Known));

    public override SpanReading In(int year, DayOrder order)
    {
        if (Within is null) return SpanReading.No(SpanDoubt.OpenEnd);
        var run = Within is MonthsForm months && months.Whole(year) is { } whole ? SpanReading.Clear(whole.First, whole.Last) : Within.In(year, order);
        if (run.Days is not { } days) return run;
        var only = days.Days().Where(day => day.DayOfWeek == Weekday).ToValueList();
        if (only.Count == 0) return SpanReading.No(SpanDoubt.Impossible);
        var span = new DaySpan(only[0], only[^1]);
        return Some ? SpanReading.Of(span.First, span.Last, SpanDoubt.SomeDays, span) : SpanReading.Clear(span.First, span.Last) with { Only = only };
    }
}

/// <summary>Days of one list: "3, 10 and 17 March".</summary>
internal sealed record ListForm(ValueList<DayPieces> Listed) : SpanForm
{
    public override int? Year => Listed[^1].Year;

    public override FigureOrder Order => Listed.Select(day => day.Order).Max();

    public override WrittenDate Written => new(0, 0, WrittenKind.Span, Listed[0].Written, Listed[^1].Written);

    public override SpanReading In(int year, DayOrder order)
    {
        var days = new List<DateOnly>();
        foreach (var written in Listed.Select(day => day.In(Settled(order))))
        {
            if (written.On(written.Year ?? Year ?? year) is not { } day) return SpanReading.No(SpanDoubt.Impossible);
            days.Add(day);
        }
        if (days.Zip(days.Skip(1)).Any(pair => pair.Second <= pair.First)) return SpanReading.Of(days[0], days[^1], SpanDoubt.Backward);
        var span = SpanReading.Clear(days[0], days[^1]);
        return days[^1].DayNumber - days[0].DayNumber == days.Count - 1 ? span : span with { Only = new(days) };
    }
}

/// <summary>A start without an end, or an end without a start.</summary>
internal sealed record OpenForm(SpanForm Bound, bool IsStart) : SpanForm
{
    public override int? Year => Bound.Year;

    public override FigureOrder Order => Bound.Order;

    public override bool HasWeekday => Bound.HasWeekday;

    public override WrittenDate Written => Bound.Written;

    public override SpanReading In(int year, DayOrder order)
    {
        var read = Bound.In(year, order);
        if (read.Doubt is not (SpanDoubt.None or SpanDoubt.WholeMonth or SpanDoubt.WeekNumber)) return read;
        return IsStart ? SpanReading.Of(read.From, null, SpanDoubt.OpenEnd) : SpanReading.Of(null, read.To, SpanDoubt.OpenStart);
    }
}
