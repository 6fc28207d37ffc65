using System.Collections.Immutable;

namespace Seasonwright.Store.Log;

/// <summary>What a gesture adds to one stream.</summary>
/// <param name="After">The number of the stream's last entry when the edits were decided; 0 for an empty or new stream.</param>
/// <param name="Entries">At least one, in order.</param>
public sealed record StreamAppend(StreamId Stream, long After, ImmutableArray<NewEntry> Entries)
{
    /// <summary>Set when the stream is born here; then <see cref="After"/> is 0.</summary>
    public NewStream? Creates { get; init; }

    /// <summary>The stream's new title for the directory, when the edits change it; null leaves it.</summary>
    public string? Title { get; init; }

    /// <inheritdoc cref="LogEntry" path="/param[@name='Undoes']"/>
    public long? Undoes { get; init; }

    /// <inheritdoc cref="LogEntry" path="/param[@name='Redoes']"/>
    public long? Redoes { get; init; }
}
