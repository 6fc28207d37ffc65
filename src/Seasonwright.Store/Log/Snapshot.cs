namespace Seasonwright.Store.Log;

/// <summary>The value of a stream after its entry <paramref name="Number"/>, kept only to open faster; the log can always make it again.</summary>
public sealed record Snapshot(ClubId Club, StreamId Stream, long Number, int WireVersion, string Json, string Hash);
