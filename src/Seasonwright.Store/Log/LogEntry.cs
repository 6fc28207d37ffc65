namespace Seasonwright.Store.Log;

/// <summary>One edit and the step it made, as acknowledged. Never changed afterwards; the database itself refuses.</summary>
/// <param name="Number">Place in the stream: 1, 2, 3 ... without a gap.</param>
/// <param name="Gesture">The gesture that asked for it; entries of one gesture are one group, appended and undone together.</param>
/// <param name="IndexInGesture">Place among the group's entries in this stream, from 0.</param>
/// <param name="Author">Person id, never a name.</param>
/// <param name="Instant">When it was appended, UTC.</param>
/// <param name="WireVersion">Version of the form of both JSON texts.</param>
/// <param name="HashAfter">Hash of the value after this step; opening compares it.</param>
/// <param name="Undoes">First number of the group in this stream that this entry's group takes back; null if none.</param>
/// <param name="Redoes">First number of the undoing group in this stream that this entry's group takes back; null if none.</param>
public sealed record LogEntry(
    ClubId Club, StreamId Stream, long Number, Guid Gesture, int IndexInGesture, string Author, DateTimeOffset Instant,
    int WireVersion, string EditJson, string StepJson, string HashAfter, long? Undoes, long? Redoes);
