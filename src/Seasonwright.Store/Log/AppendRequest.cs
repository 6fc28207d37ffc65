using System.Collections.Immutable;

namespace Seasonwright.Store.Log;

/// <summary>One gesture's entries for one or several streams: all of them are appended, or none.</summary>
/// <param name="Gesture">Unique per stream. Sent again it gets the first answer, whatever else the request holds.</param>
/// <param name="Author">Person id, never a name.</param>
/// <param name="Streams">At least one; each stream at most once.</param>
/// <exception cref="ArgumentException">A part breaks the rule its own documentation gives.</exception>
public sealed record AppendRequest(Guid Gesture, string Author, ImmutableArray<StreamAppend> Streams)
{
    public ImmutableArray<StreamAppend> Streams { get; } = Checked(Streams);

    private static ImmutableArray<StreamAppend> Checked(ImmutableArray<StreamAppend> streams)
    {
        if (streams.IsDefaultOrEmpty) throw new ArgumentException("A gesture appends to at least one stream.", nameof(streams));
        if (streams.DistinctBy(append => append.Stream).Count() < streams.Length)
            throw new ArgumentException("A gesture names each stream once.", nameof(streams));
        foreach (var append in streams)
        {
            if (append.Entries.IsDefaultOrEmpty) throw new ArgumentException("An append holds at least one entry.", nameof(streams));
            if (append.After < 0) throw new ArgumentException("A tail is not negative.", nameof(streams));
            if (append.Creates is not { } birth) continue;
            if (append.After != 0) throw new ArgumentException("A new stream starts after 0.", nameof(streams));
            if (birth.Team is null == birth.Kind is StreamKind.Season)
                throw new ArgumentException("A season, and only a season, belongs to a team.", nameof(streams));
        }
        return streams;
    }
}
