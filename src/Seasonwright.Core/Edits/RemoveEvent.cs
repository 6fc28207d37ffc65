using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Removes an event.</summary>
public sealed record RemoveEvent(EventId Event) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say("did.remove-event", season.Facts.Find(SeasonFacets.Event, Event)?.Title);

    internal override void Decide(SeasonDraft draft)
    {
        if (draft.Find(SeasonFacets.Event, Event) is null) draft.Refuse("event-unknown", $"event/{Event}", Event);
        draft.Remove(SeasonFacets.Event, Event);
    }
}
