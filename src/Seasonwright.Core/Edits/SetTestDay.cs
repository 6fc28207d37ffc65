using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds, moves or changes a test day.</summary>
public sealed record SetTestDay(TestDay TestDay) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.set-test", TestDay.Battery, MatchWords.Of(TestDay.Day));

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, TestDay);
        draft.Set(SeasonFacets.TestDay, TestDay.Id, TestDay);
    }

    internal static void Check(Draft draft, TestDay test)
    {
        draft.Require(test.Battery, $"test/{test.Id}.battery", SeasonDraft.LongestName);
        draft.RequirePossible(test.Day, $"test/{test.Id}.day");
        draft.Limit(test.Part, $"test/{test.Id}.part", SeasonDraft.LongestName);
        draft.Limit(test.For, $"test/{test.Id}.for", SeasonDraft.LongestName);
        SetEvent.CheckSource(draft, test.Source, $"test/{test.Id}");
    }
}
