namespace Seasonwright.Store.Log;

/// <summary>The tombstone of a removed stream: who removed it and when, without what it held.</summary>
/// <param name="RemovedBy">Person id.</param>
/// <param name="Instant">UTC.</param>
/// <param name="Entries">How many entries went with it.</param>
public sealed record Removal(ClubId Club, StreamId Stream, StreamKind Kind, StreamId? Team, string RemovedBy, DateTimeOffset Instant, long Entries);
