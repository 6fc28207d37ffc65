using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Adds, moves or changes a test day.</summary>
public sealed record SetTestDay(TestDay TestDay) : SeasonEdit
{
    public override string Describe(Season season) => Sentences.Say("did.set-test", TestDay.Battery, MatchWords.Of(TestDay.Day));

    internal override void Decide(SeasonDraft draft)
    {
        draft.Require(TestDay.Battery, $"test/{TestDay.Id}.battery", SeasonDraft.LongestName);
        draft.RequirePossible(TestDay.Day, $"test/{TestDay.Id}.day");
        draft.Limit(TestDay.Part, $"test/{TestDay.Id}.part", SeasonDraft.LongestName);
        draft.Limit(TestDay.For, $"test/{TestDay.Id}.for", SeasonDraft.LongestName);
        draft.Set(SeasonFacets.TestDay, TestDay.Id, TestDay);
    }
}
