using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Sets how much a quality gets in weeks, first and last inside.</summary>
public sealed record SetEmphasis(WeekId First, WeekId Last, QualityId Quality, Emphasis Emphasis) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) =>
        Sentences.Say("did.set-emphasis", setup.NameOf(Quality), Sentences.Say($"emphasis.{Emphasis}"), WeekWords.Of(season, First, Last));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var week in draft.OpenWeeks(First, Last))
            draft.SetOrRemove(SeasonFacets.WeekEmphasis, new Pair<WeekId, QualityId>(week.Id, Quality), Emphasis);
    }
}
