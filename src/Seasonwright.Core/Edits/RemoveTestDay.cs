using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes a test day.</summary>
public sealed record RemoveTestDay(TestDayId TestDay) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-test", season.Facts.Find(SeasonFacets.TestDay, TestDay)?.Battery);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.TestDay, TestDay) is null) draft.Refuse("test-unknown", $"test/{TestDay}", TestDay);
        draft.Remove(SeasonFacets.TestDay, TestDay);
    }
}
