using Seasonwright.Core;
using Seasonwright.Documents.Year;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>A track that may be left off a poster.</summary>
public sealed record PosterTrack(string Id, string Label);

/// <summary>The tracks of a season's poster, from top to bottom; months and weeks are always there, and qualities go with their emphasis.</summary>
public static class PosterTracks
{
    public static ValueList<PosterTrack> Of(SharedSeason shared) => YearDrawing.Of(shared.Season, shared.Setup, new YearView()).Tracks
        .Where(track => track.Id is not ("months" or "weeks") && !track.Id.StartsWith("emphasis-", StringComparison.Ordinal))
        .Select(track => new PosterTrack(track.Id, track.Label)).ToValueList();
}
