using Seasonwright.Core;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Events;

/// <summary>A test day, or several in a row, as the list has it.</summary>
/// <param name="Line">Physical line where it starts, 1 is the first.</param>
/// <param name="Battery">What is tested, as written.</param>
/// <param name="From">First day, inside; see <see cref="EventRow"/>.</param>
/// <param name="To">Last day, inside.</param>
/// <param name="Only">The days that count, where not every day from first to last does; otherwise null.</param>
public sealed record TestDayRow(
    int Line,
    string Battery,
    DateOnly? From,
    DateOnly? To,
    ValueList<DateOnly>? Only,
    string? Part,
    string? For,
    RowState State,
    ValueList<string> Ask)
{
    /// <inheritdoc cref="EventRow.PartInWords"/>
    public string? PartInWords => PartWords.Of(Part, Only);

    /// <summary>The days that may be written, one test day each; empty while the row waits.</summary>
    public IEnumerable<DateOnly> Days => State == RowState.Waiting || From is not { } from || To is not { } to || from > to ? []
        : Only is not null ? Only : new DaySpan(from, to).Days();
}
