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
        Write(draft, TestDay);
    }

    /// <summary>Writes a test day that was changed by hand: where it came from and what its list said of it stay known.</summary>
    internal static void Write(SeasonDraft draft, TestDay test) =>
        draft.Set(SeasonFacets.TestDay, test.Id, draft.Find(SeasonFacets.TestDay, test.Id) is { Source: not null } before ? test.ListedAs(before.AsListed()) : test);

    internal static void Check(Draft draft, TestDay test)
    {
        draft.Require(test.Battery, $"test/{test.Id}.battery", SeasonDraft.LongestName);
        draft.RequirePossible(test.Day, $"test/{test.Id}.day");
        draft.Limit(test.Part, $"test/{test.Id}.part", SeasonDraft.LongestName);
        draft.Limit(test.For, $"test/{test.Id}.for", SeasonDraft.LongestName);
        SetEvent.CheckSource(draft, test.Source, $"test/{test.Id}");
        if (test.Source?.Listed is not null) Check(draft, test.AsListed());
    }
}
