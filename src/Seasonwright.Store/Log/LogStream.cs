namespace Seasonwright.Store.Log;

/// <summary>A stream as the directory lists it. All but the title is fixed at birth; the title repeats what the log says, for listing only.</summary>
/// <param name="Team">The team a season belongs to; null for the other kinds.</param>
/// <param name="Created">Instant of the first entry, UTC.</param>
public sealed record LogStream(ClubId Club, StreamId Id, StreamKind Kind, string Title, DateTimeOffset Created, StreamId? Team);
