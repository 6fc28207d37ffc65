using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Adds or changes an event.</summary>
public sealed record SetEvent(Event Event) : SeasonEdit
{
    public const int MostTraining = 130;

    public override string Describe(Season season, Setup setup) =>
        Sentences.Say(season.Facts.Find(SeasonFacets.Event, Event.Id) is null ? "did.add-event" : "did.change-event", Event.Title, Event.Days.First, Event.Days.Last);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Event);
        // Changed by hand: where it came from and what its list said of it stay known.
        draft.Set(SeasonFacets.Event, Event.Id, draft.Find(SeasonFacets.Event, Event.Id) is { Source: not null } before ? Event.ListedAs(before.AsListed()) : Event);
    }

    internal static void Check(Draft draft, Event item)
    {
        var subject = $"event/{item.Id}";
        draft.Require(item.Title, $"{subject}.title", SeasonDraft.LongestName);
        draft.RequirePossible(item.Days.First, $"{subject}.first");
        draft.RequirePossible(item.Days.Last, $"{subject}.last");
        foreach (var (text, field) in new[] { (item.Part, "part"), (item.For, "for"), (item.Place, "place"), (item.Note, "note") })
            draft.Limit(text, $"{subject}.{field}", SeasonDraft.LongestText);
        CheckSource(draft, item.Source, subject);
        if (item.Training is { } training && training.Value > MostTraining) draft.Refuse("training", $"{subject}.training", training.Value, MostTraining);
        if (item.Nights is < 0 or > 120) draft.Refuse("nights", $"{subject}.nights", item.Nights);
        foreach (var leg in item.Legs ?? ValueList<Leg>.Empty)
        {
            draft.RequirePossible(leg.Day, $"{subject}.leg");
            draft.RequirePossible(leg.ArrivalDay, $"{subject}.leg");
            draft.Limit(leg.From, $"{subject}.leg", SeasonDraft.LongestText);
            draft.Limit(leg.To, $"{subject}.leg", SeasonDraft.LongestText);
            if (leg.ZoneShift is < -26 or > 26) draft.Refuse("zone-shift", $"{subject}.leg", leg.ZoneShift);
        }
        if (item.Source?.Listed is not null) Check(draft, item.AsListed());
    }

    internal static void CheckSource(Draft draft, EventSource? source, string subject)
    {
        draft.Limit(source?.List, $"{subject}.source", SeasonDraft.LongestName);
        draft.Limit(source?.Entry, $"{subject}.source", SeasonDraft.LongestName);
    }
}
