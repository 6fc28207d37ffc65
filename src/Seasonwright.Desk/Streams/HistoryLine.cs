using Seasonwright.Core.Facts;

namespace Seasonwright.Desk.Streams;

/// <summary>One gesture in the history.</summary>
/// <param name="First">Log number of its first entry.</param>
/// <param name="Last">Log number of its last entry, inside.</param>
/// <param name="Author">Person id.</param>
/// <param name="Words">What was done, one line.</param>
/// <param name="Named">What it is about: for an undo or a redo the gesture taken or brought back.</param>
/// <param name="TakenBack">Whether it has been undone and not redone since.</param>
public sealed record HistoryLine(long First, long Last, string Author, DateTimeOffset Instant, string Words, string Named, bool TakenBack)
{
    /// <summary>The places it wrote.</summary>
    public required IReadOnlySet<Key> Wrote { get; init; }
}
