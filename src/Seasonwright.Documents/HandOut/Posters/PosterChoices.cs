using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Posters;

/// <summary>What a poster shows.</summary>
/// <param name="Paper">Its size; it always lies on its side.</param>
/// <param name="Scheme">Light, or grey for a printer without colour.</param>
public sealed record PosterChoices(PaperSize Paper, Scheme Scheme = Scheme.Light)
{
    /// <summary>
    /// Ids of tracks that are not wanted. The notes, and which weeks are locked or ready, are the coach's own and hang on no wall
    /// unless somebody wants them there.
    /// </summary>
    public ValueList<string> Hidden { get; init; } = ["notes", PosterTracks.Marks];
}
