using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>How sure the order of a day and a month in figures is.</summary>
internal enum FigureOrder
{
    /// <summary>Named months, dots and ISO dates leave no doubt.</summary>
    Told,

    /// <summary>Both ways are possible; kept day first.</summary>
    Either,

    /// <summary>A figure above 12 shows the day first, and with it the habit of the file.</summary>
    DayFirst,

    /// <summary>A figure above 12 shows the month first.</summary>
    MonthFirst,
}

/// <summary>A day as written: any of its pieces may be missing.</summary>
internal sealed record DayPieces(int? Day, int? Month, int? Year, DayOfWeek? Weekday, FigureOrder Order = FigureOrder.Told)
{
    /// <summary>Years that a season may lie in; everything else is no year.</summary>
    public static bool IsYear(int year) => year is >= 1950 and <= 2149;

    /// <summary>The same day read in one order.</summary>
    public DayPieces In(DayOrder order) => Order == FigureOrder.Either && order == DayOrder.MonthFirst ? this with { Day = Month, Month = Day } : this;

    /// <summary>The same for deciding a whole column.</summary>
    public WrittenDay Written => Order switch
    {
        FigureOrder.Told => new(Day, Month ?? 0, Year, WrittenOrder.Known, Weekday),
        FigureOrder.MonthFirst => new(Month, Day ?? 0, Year, WrittenOrder.Open, Weekday),
        _ => new(Day, Month ?? 0, Year, WrittenOrder.Open, Weekday),
    };

    /// <summary>Month and day as one ascending number, for telling which comes first in a year.</summary>
    public int InYear => (Month ?? 0) * 100 + (Day ?? 0);

    /// <summary>The day of a calendar year, or null where there is no such day (31 April).</summary>
    public DateOnly? On(int year) =>
        Day is { } day && Month is { } month && IsYear(year) && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
}
