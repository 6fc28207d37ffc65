using Seasonwright.Core;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>What keeps a span of days from being certain.</summary>
public enum SpanDoubt
{
    None,

    /// <summary>The text names no days that can be read.</summary>
    Unreadable,

    /// <summary>There is no such day: 31 April, 29 February of a common year, week 53 of a short year.</summary>
    Impossible,

    /// <summary>Day and month in figures can be read both ways round.</summary>
    Order,

    /// <summary>No year is written and more than one is possible, or none is known.</summary>
    Year,

    /// <summary>More than one span stands in the text.</summary>
    Several,

    /// <summary>It ends before it starts.</summary>
    Backward,

    /// <summary>The day of the week written does not fit the date.</summary>
    Weekday,

    /// <summary>A start without an end.</summary>
    OpenEnd,

    /// <summary>An end without a start.</summary>
    OpenStart,

    /// <summary>Longer than a year.</summary>
    Long,

    /// <summary>Only a month, or a part of one, is named.</summary>
    WholeMonth,

    /// <summary>"Week 43" without saying whether it is counted by the calendar or by the season.</summary>
    WeekNumber,

    /// <summary>Some of the days of a run only, and it is not said which: "every other Wednesday".</summary>
    SomeDays,
}

/// <summary>A span of days read from words.</summary>
/// <param name="From">First day as far as it is known. With <see cref="SpanDoubt.Backward"/> it lies after <paramref name="To"/>.</param>
/// <param name="To">Last day, inside.</param>
/// <param name="Doubt">The gravest doubt; <see cref="SpanDoubt.None"/> where the text is clear.</param>
/// <param name="Choices">What the text may mean, the likelier first; empty where nothing can be offered.</param>
/// <param name="Only">The days that count, where not every day from first to last does; otherwise null.</param>
/// <param name="Part">The part of the days, in words ("pm", "from noon on the first day"); null for whole days.</param>
/// <param name="IsTentative">The text itself calls it unsure ("?", "tbc", "about").</param>
public sealed record SpanReading(
    DateOnly? From,
    DateOnly? To,
    SpanDoubt Doubt,
    ValueList<DaySpan> Choices,
    ValueList<DateOnly>? Only = null,
    string? Part = null,
    bool IsTentative = false)
{
    /// <summary>The span, once nothing is in doubt.</summary>
    public DaySpan? Days => Doubt == SpanDoubt.None ? new DaySpan(From!.Value, To!.Value) : null;

    /// <summary>From the first to the last day as far as both are known and in order, in doubt or not.</summary>
    internal DaySpan? Whole => From is { } from && To is { } to && from <= to ? new DaySpan(from, to) : null;

    internal static SpanReading Clear(DateOnly from, DateOnly to) => new(from, to, SpanDoubt.None, ValueList<DaySpan>.Empty);

    internal static SpanReading Of(DateOnly? from, DateOnly? to, SpanDoubt doubt, params IEnumerable<DaySpan> choices) => new(from, to, doubt, choices.Distinct().ToValueList());

    internal static SpanReading No(SpanDoubt doubt) => Of(null, null, doubt);
}
