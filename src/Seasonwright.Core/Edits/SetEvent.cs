using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes an event.</summary>
public sealed record SetEvent(Event Event) : SeasonEdit
{
    public const int MostTraining = 130;

    public override string Describe(Season season) =>
        Sentences.Say(season.Facts.Find(SeasonFacets.Event, Event.Id) is null ? "did.add-event" : "did.change-event", Event.Title, Event.Days.First, Event.Days.Last);

    internal override void Decide(SeasonDraft draft)
    {
        var subject = $"event/{Event.Id}";
        draft.Require(Event.Title, $"{subject}.title", SeasonDraft.LongestName);
        draft.RequirePossible(Event.Days.First, $"{subject}.first");
        draft.RequirePossible(Event.Days.Last, $"{subject}.last");
        foreach (var (text, field) in new[] { (Event.Part, "part"), (Event.For, "for"), (Event.Place, "place"), (Event.Note, "note") })
            draft.Limit(text, $"{subject}.{field}", SeasonDraft.LongestText);
        if (Event.Training is { } training && training.Value > MostTraining) draft.Refuse("training", $"{subject}.training", training.Value, MostTraining);
        if (Event.Nights is < 0 or > 120) draft.Refuse("nights", $"{subject}.nights", Event.Nights);
        foreach (var leg in Event.Legs ?? ValueList<Leg>.Empty)
        {
            draft.RequirePossible(leg.Day, $"{subject}.leg");
            if (leg.ZoneShift is < -26 or > 26) draft.Refuse("zone-shift", $"{subject}.leg", leg.ZoneShift);
        }
        draft.Set(SeasonFacets.Event, Event.Id, Event);
    }
}
