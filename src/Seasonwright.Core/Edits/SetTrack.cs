using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds a track of the coach's own, or changes its name, order, choices or unit. Form and grain stay once cells are filled.</summary>
public sealed record SetTrack(Track Track) : SeasonEdit
{
    public const int Most = 40;

    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(season.Facts.Find(SeasonFacets.Track, Track.Id) is null ? "did.add-track" : "did.change-track", Track.Name);

    internal override void Decide(SeasonDraft draft)
    {
        var subject = $"track/{Track.Id}";
        Check(draft, Track);
        if (draft.Before.Tracks.Count(track => track.Id != Track.Id) >= Most) draft.Refuse("tracks-full", subject, Most);
        if (draft.Find(SeasonFacets.Track, Track.Id) is { } known && (known.Form != Track.Form || known.Grain != Track.Grain)
            && draft.Facts.All(SeasonFacets.TrackCell).Any(cell => cell.Subject.First == Track.Id))
            draft.Refuse("track-filled", subject, known.Name);
        draft.Set(SeasonFacets.Track, Track.Id, Track);
    }

    internal static void Check(Draft draft, Track track)
    {
        var subject = $"track/{track.Id}";
        draft.Require(track.Name, $"{subject}.name", SeasonDraft.LongestName);
        draft.Limit(track.Unit, $"{subject}.unit", 20);
        foreach (var choice in track.Choices ?? ValueList<string>.Empty) draft.Require(choice, $"{subject}.choices", SeasonDraft.LongestName);
        if (track.Form == TrackForm.Choice && track.Choices is not { Count: > 0 }) draft.Refuse("choices-missing", $"{subject}.choices");
    }
}
