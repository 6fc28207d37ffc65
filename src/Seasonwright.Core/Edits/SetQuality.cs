using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds a quality, or changes its name, kind or order.</summary>
public sealed record SetQuality(Quality Quality) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-quality", Quality.Name);

    internal override void Decide(Draft draft)
    {
        draft.Require(Quality.Name, $"quality/{Quality.Id}.name", SeasonDraft.LongestName);
        OwnList(draft);
        draft.Set(SetupFacets.Quality, Quality.Id, Quality);
    }

    /// <summary>The default list becomes the team's own the moment it is changed.</summary>
    internal static void OwnList(Draft draft)
    {
        if (draft.Facts.All(SetupFacets.Quality).Any()) return;
        foreach (var quality in Quality.Defaults) draft.Set(SetupFacets.Quality, quality.Id, quality);
    }
}
