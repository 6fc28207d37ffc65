using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Two figures of a list without a heading for them: a kick-off ("19:30"), a score ("28:24"), or either ("20:15").</summary>
/// <param name="Place">Cells of one place mean one thing.</param>
/// <param name="Text">As written.</param>
internal sealed record FigureCell(FigurePlace Place, string Text)
{
    private static readonly (int First, int Last) UsualHours = (9, 21);

    /// <summary>Whether a cell is two figures, and no time that is in doubt.</summary>
    public static bool Is(string cell) => ResultText.Read(cell) is not null && TimeText.Read(cell).Sense is TimeSense.Known or TimeSense.Unreadable;

    /// <summary>It can be a time of day.</summary>
    public bool MayBeClock => Clock is not null;

    /// <summary>A time at which matches are usually fixed: on five minutes, from 9:00 to 21:55. Common practice, no source.</summary>
    public bool IsUsualClock => Clock is { } time && time.Minute % 5 == 0 && time.Hour >= UsualHours.First && time.Hour <= UsualHours.Last;

    /// <summary>Both figures together; a score at half time is never more than the final one.</summary>
    public int Sum => ResultText.Read(Text) is { } result ? result.First + result.Second : 0;

    private TimeOnly? Clock => TimeText.Read(Text) is { Sense: TimeSense.Known } reading ? reading.Time : null;
}

/// <summary>Where a row holds a figure.</summary>
/// <param name="At">The column; in a line of plain text how far in front of the names or behind them.</param>
/// <param name="InLine">A line of plain text, which has no columns.</param>
internal readonly record struct FigurePlace(int At, bool InLine = false)
{
    /// <summary>Between the two names, whatever the column.</summary>
    public static FigurePlace Between { get; } = new(-1);
}
