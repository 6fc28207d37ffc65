using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>A date of a column, and the written form it came from.</summary>
public readonly record struct LineDate(int Line, WrittenDate Written);

/// <summary>What a written date says once order and year are decided.</summary>
/// <param name="Line">Physical line.</param>
/// <param name="First">The day, or the first possible one; null while it must be asked, or when there is no such day.</param>
/// <param name="Last">The last possible day, inside; null for one day.</param>
/// <param name="Ask">Id of the open question it waits for; null when it is certain.</param>
public sealed record DateReading(int Line, WrittenDate Written, DateOnly? First, DateOnly? Last, string? Ask)
{
    /// <summary>The written numbers are no day of the calendar (31 February).</summary>
    public bool IsImpossible => First is null && Ask is null;

    /// <summary>The last day lies before the first.</summary>
    public bool IsBackward => Last < First;

    /// <summary>A weekday stands beside it and is another than the date's.</summary>
    public bool WeekdayDiffers => Differs(Written.First.Weekday, First) || Differs(Written.Last?.Weekday, Last);

    public DaySpan? Days => First is not { } first ? null : new DaySpan(first, Last is { } last && last >= first ? last : first);

    private bool Differs(DayOfWeek? weekday, DateOnly? day) => Written.Kind is not (WrittenKind.Weeks or WrittenKind.Month) && weekday is { } written && day is { } read
        && Written.Kind != WrittenKind.WeekOf && read.DayOfWeek != written;
}
