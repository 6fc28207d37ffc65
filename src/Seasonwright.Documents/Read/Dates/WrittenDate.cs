namespace Seasonwright.Documents.Read.Dates;

/// <summary>A date or span as a text writes it: one day, a run of days, two alternatives, a week, a month.</summary>
/// <param name="Start">Where in the text it begins, from 0.</param>
/// <param name="End">The character after its last one.</param>
/// <param name="Kind">Its form.</param>
/// <param name="First">The day, or the first of two; for a month its month; empty for numbered weeks.</param>
/// <param name="Last">The last day of a span, or the second alternative.</param>
/// <param name="Week">The number of a calendar week.</param>
/// <param name="LastWeek">The last of a run of numbered weeks.</param>
/// <param name="WeekYear">The year written with a week number.</param>
public sealed record WrittenDate(int Start, int End, WrittenKind Kind, WrittenDay First = default, WrittenDay? Last = null, int? Week = null, int? LastWeek = null, int? WeekYear = null)
{
    /// <summary>The days written in it; none for numbered weeks.</summary>
    public IEnumerable<WrittenDay> Days => Kind == WrittenKind.Weeks ? [] : Last is { } last ? [First, last] : [First];

    /// <summary>No year stands in it.</summary>
    public bool LacksYear => Kind == WrittenKind.Weeks ? WeekYear is null : Days.All(day => day.Year is null);
}

/// <summary>The form of a written date.</summary>
public enum WrittenKind
{
    Day,

    /// <summary>From a day to a day, both inside.</summary>
    Span,

    /// <summary>One of two days ("or", "19/20 September").</summary>
    Either,

    /// <summary>"week of 6 December".</summary>
    WeekOf,

    /// <summary>"week 43", "KW 49-50".</summary>
    Weeks,

    /// <summary>"May", "May 2027".</summary>
    Month,
}
