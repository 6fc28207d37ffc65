namespace Seasonwright.Documents.Read.Times;

/// <summary>What a time cell says.</summary>
/// <param name="Time">The venue's clock; null unless the sense is one that names a time.</param>
/// <param name="End">The end, where the cell gives a span.</param>
/// <param name="Signed">A sign stood in front ("+17:00"), as a spreadsheet formula would have it.</param>
public readonly record struct TimeReading(TimeSense Sense, TimeOnly? Time = null, TimeOnly? End = null, bool Signed = false);

/// <summary>How a time cell is to be taken.</summary>
public enum TimeSense
{
    Empty,

    Known,

    /// <summary>Said to be unknown: TBD, tbc, offen.</summary>
    Unknown,

    /// <summary>A time with a question mark or "about".</summary>
    Doubtful,

    /// <summary>12:xx AM, which is a quarter past midnight at 12:15 and rarely meant.</summary>
    JustAfterMidnight,

    /// <summary>0:00 or 24:00 alone, which programs write where no time is known.</summary>
    Midnight,

    /// <summary>Text that is no time.</summary>
    Unreadable,
}
