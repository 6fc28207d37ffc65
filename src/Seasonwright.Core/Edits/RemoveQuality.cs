using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes a quality off the team's list. What seasons planned for it stays in them and shows again if it returns.</summary>
public sealed record RemoveQuality(QualityId Quality) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.remove-quality", setup.Qualities.FirstOrDefault(q => q.Id == Quality)?.Name);

    internal override void Decide(Draft draft)
    {
        SetQuality.OwnList(draft);
        if (draft.Find(SetupFacets.Quality, Quality) is null) draft.Refuse("quality-unknown", $"quality/{Quality}", Quality);
        // An empty list would read as "the defaults".
        if (draft.Facts.All(SetupFacets.Quality).Count() == 1) draft.Refuse("quality-last", $"quality/{Quality}");
        draft.Remove(SetupFacets.Quality, Quality);
    }
}
