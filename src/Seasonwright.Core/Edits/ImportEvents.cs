using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Takes a list of events and test days in, whole or not at all.</summary>
/// <param name="From">The list, in words, for the history.</param>
public sealed record ImportEvents(ValueList<Event> Events, ValueList<TestDay> TestDays, string From) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.import-events", From, Events.Count + TestDays.Count);

    internal override void Decide(SeasonDraft draft)
    {
        if (Events.Count + TestDays.Count > ImportFixtures.Most) draft.Refuse("import-large", "events", Events.Count + TestDays.Count, ImportFixtures.Most);
        if (Events.DistinctBy(item => item.Id).Count() != Events.Count || TestDays.DistinctBy(test => test.Id).Count() != TestDays.Count) draft.Refuse("entry-twice", "events");
        draft.Limit(From, "from", SeasonDraft.LongestName);
        if (draft.IsRefused) return;
        foreach (var item in Events)
        {
            SetEvent.Check(draft, item);
            draft.Set(SeasonFacets.Event, item.Id, item);
        }
        foreach (var test in TestDays)
        {
            SetTestDay.Check(draft, test);
            draft.Set(SeasonFacets.TestDay, test.Id, test);
        }
    }
}
