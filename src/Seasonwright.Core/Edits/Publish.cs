using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Makes the season as it stands a version that staff and athletes see.</summary>
/// <param name="Name">What to call it; null for its number alone.</param>
public sealed record Publish(string? Name = null) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.publish", NextNumber(season), Name is null ? "" : $" ({Name})");

    internal override void Decide(SeasonDraft draft)
    {
        draft.Limit(Name, "name", SeasonDraft.LongestName);
        var number = NextNumber(draft.Before);
        draft.Set(SeasonFacets.Publication, new VersionNumber(number), new Publication(number, Name));
    }

    private static int NextNumber(Season season) => (season.LastPublication?.Number ?? 0) + 1;
}
