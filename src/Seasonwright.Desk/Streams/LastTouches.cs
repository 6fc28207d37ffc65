using Seasonwright.Core.Facts;

namespace Seasonwright.Desk.Streams;

/// <summary>Who wrote each place of a stream last, and when: an undo writes too.</summary>
/// <param name="history">Every gesture, newest first.</param>
public sealed class LastTouches(IReadOnlyList<HistoryLine> history)
{
    public static async Task<LastTouches> OfAsync(OpenStream stream, CancellationToken cancel = default) => new(await stream.HistoryAsync(cancel));

    /// <summary>The newest gesture that wrote a place; null when none did.</summary>
    public HistoryLine? Of(Key place) => history.FirstOrDefault(line => line.Wrote.Contains(place));
}
