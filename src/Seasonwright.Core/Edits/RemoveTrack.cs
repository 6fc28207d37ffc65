using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a track of the coach's own with all its cells. Undo brings both back.</summary>
public sealed record RemoveTrack(TrackId Track) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-track", season.Facts.Find(SeasonFacets.Track, Track)?.Name);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Track, Track) is null) draft.Refuse("track-unknown", $"track/{Track}", Track);
        draft.Remove(SeasonFacets.Track, Track);
        foreach (var (cell, _) in draft.Facts.All(SeasonFacets.TrackCell).Where(cell => cell.Subject.First == Track).ToList())
            draft.Remove(SeasonFacets.TrackCell, cell);
    }
}
