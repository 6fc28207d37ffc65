using Seasonwright.Core;
using Seasonwright.Core.Facts;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Calendars;

internal enum EntryStatus
{
    Confirmed,
    Tentative,
    Cancelled,
}

/// <summary>One entry of a calendar, as it is read from a file again. Texts are clean and of one line, but for the lines of the description.</summary>
/// <param name="End">Of days the one after the last; null for one day, or where only the beginning is known.</param>
/// <param name="IsFree">Leaves the time free for other things.</param>
internal sealed record CalendarEntry(
    string Uid,
    CalendarTime Start,
    CalendarTime? End,
    string Summary,
    EntryStatus Status,
    bool IsFree,
    string? Place,
    string? Description,
    ValueList<string> Categories,
    string? Colour)
{
    /// <summary>This entry called off. Said in its title too: many programs show no status.</summary>
    public CalendarEntry CalledOff() => Status == EntryStatus.Cancelled ? this
        : this with { Status = EntryStatus.Cancelled, Summary = PlainText.Clean(HandOutTexts.Say("calendar.cancelled", Summary)) };
}

/// <summary>An entry with what it follows from.</summary>
/// <param name="From">The facts of season and setup that say it, its own first. The same for as long as it is there.</param>
/// <param name="IsTaken">An entry that was there and has lost its place: told only to those who may hold it.</param>
internal sealed record PlannedEntry(CalendarEntry Entry, ValueList<Key> From, bool IsTaken = false);

/// <summary>An entry as the calendar tells it this time.</summary>
/// <param name="Sequence">How often it has been changed (RFC 5545, 3.8.7.4).</param>
internal sealed record RevisedEntry(CalendarEntry Entry, int Sequence);
