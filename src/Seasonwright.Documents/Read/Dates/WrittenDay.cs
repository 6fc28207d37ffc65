namespace Seasonwright.Documents.Read.Dates;

/// <summary>A day as a text writes it, before the year and the order of day and month are decided.</summary>
/// <param name="First">The day where the order is known, else the first of the two numbers. Null for a month without a day.</param>
/// <param name="Second">The month where the order is known, else the second of the two numbers.</param>
/// <param name="Year">Two figures are taken as 20xx. Null when not written.</param>
/// <param name="Order">What the form itself says about the order.</param>
/// <param name="Weekday">As written in front, or null.</param>
public readonly record struct WrittenDay(int? First, int Second, int? Year, WrittenOrder Order, DayOfWeek? Weekday = null)
{
    /// <summary>Both orders give a day that exists in some year, and they differ.</summary>
    public bool IsSwappable => Order == WrittenOrder.Open && First != Second && First <= 12 && Second <= 12;

    /// <summary>The day of the month under an order; null for a month without a day.</summary>
    public int? DayOf(DayOrder order) => IsMonthFirst(order) ? Second : First;

    public int MonthOf(DayOrder order) => IsMonthFirst(order) ? First!.Value : Second;

    /// <summary>The date in a year under an order, or null when there is none.</summary>
    public DateOnly? In(int year, DayOrder order)
    {
        var (day, month) = (DayOf(order) ?? 1, MonthOf(order));
        return year is >= 1 and <= 9999 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
    }

    // A number above 12 can only be a day, whatever the column's order is; with points the day stands first.
    private bool IsMonthFirst(DayOrder order) => Order switch
    {
        WrittenOrder.Known => false,
        WrittenOrder.Points => Second > 12 && First <= 12,
        _ => Second > 12 && First <= 12 || order == DayOrder.MonthFirst && First <= 12,
    };
}

/// <summary>What a written form says about its order.</summary>
public enum WrittenOrder
{
    /// <summary>ISO, or a month by name.</summary>
    Known,

    /// <summary>Numbers with points, as 5.9.2026: day first, by common practice wherever points are used.</summary>
    Points,

    /// <summary>Numbers with strokes or dashes: only the whole column can tell.</summary>
    Open,
}

/// <summary>Which of two numbers is the day.</summary>
public enum DayOrder
{
    DayFirst,
    MonthFirst,
}
