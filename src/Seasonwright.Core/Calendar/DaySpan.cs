namespace Seasonwright.Core.Calendar;

/// <summary>A run of days. Both ends are inside, as people say "Monday to Friday".</summary>
public readonly record struct DaySpan : IComparable<DaySpan>
{
    /// <exception cref="ArgumentException"><paramref name="last"/> lies before <paramref name="first"/>.</exception>
    public DaySpan(DateOnly first, DateOnly last)
    {
        if (last < first) throw new ArgumentException($"A span of days cannot end ({last:O}) before it starts ({first:O}).", nameof(last));
        First = first;
        Last = last;
    }

    public DateOnly First { get; }

    /// <summary>The last day, still part of the span.</summary>
    public DateOnly Last { get; }

    public static DaySpan Of(DateOnly day) => new(day, day);

    /// <summary>Days in the span, at least 1.</summary>
    public int Length => Last.DayNumber - First.DayNumber + 1;

    public bool Contains(DateOnly day) => First <= day && day <= Last;

    public bool Overlaps(DaySpan other) => First <= other.Last && other.First <= Last;

    /// <summary>Days that both spans hold, 0 when they are apart.</summary>
    public int SharedDays(DaySpan other) =>
        Math.Max(0, Math.Min(Last.DayNumber, other.Last.DayNumber) - Math.Max(First.DayNumber, other.First.DayNumber) + 1);

    public DaySpan Shift(int days) => new(First.AddDays(days), Last.AddDays(days));

    public IEnumerable<DateOnly> Days()
    {
        for (var day = First.DayNumber; day <= Last.DayNumber; day++) yield return DateOnly.FromDayNumber(day);
    }

    public int CompareTo(DaySpan other) => First != other.First ? First.CompareTo(other.First) : Last.CompareTo(other.Last);

    public override string ToString() => First == Last ? $"{First:O}" : $"{First:O}..{Last:O}";
}
