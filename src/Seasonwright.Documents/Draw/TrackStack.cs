namespace Seasonwright.Documents.Draw;

/// <summary>Tracks one below the other, as every painter sets them.</summary>
public static class TrackStack
{
    /// <summary>Each track with its top, px from the first one's.</summary>
    public static IEnumerable<(TrackDrawing Track, double Top)> Stacked(this IEnumerable<TrackDrawing> tracks)
    {
        var top = 0.0;
        foreach (var track in tracks)
        {
            yield return (track, top);
            top += track.Height;
        }
    }
}
