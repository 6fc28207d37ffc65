namespace Seasonwright.Store.Log;

/// <summary>A stream to be born with its first entries.</summary>
/// <param name="Team">The team a season belongs to, there already or born in the same request; null for the other kinds.</param>
public sealed record NewStream(StreamKind Kind, string Title, StreamId? Team = null);
