using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a programme for training at home. What was handed out of it stays in people's hands.</summary>
public sealed record RemoveHomeProgramme(HomeProgrammeId Programme) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-home", season.HomeProgramme(Programme)?.Name ?? Programme.Text);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Home, Programme) is null) draft.Refuse("home-unknown", $"home/{Programme}", Programme);
        draft.Remove(SeasonFacets.Home, Programme);
    }
}
