using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// An event or test day as it goes on after a list has been read again: what the list says anew wins over what it said before, what it leaves out stays,
/// and so does what only the coach has changed. Title and nights are the coach's alone. Where both have changed the same there are two ways: the coach's and the list's.
/// </summary>
internal static class EntryMerge
{
    public static (Event Ours, Event Theirs) Of(Event known, Event written)
    {
        // Of what the coach has entered no list had said anything: its kind and its note stay.
        var said = known.Source is null ? known with { Kind = written.Kind, Note = known.Note is null ? null : written.Note } : known.AsListed();
        var says = said with
        {
            Days = written.Days,
            Kind = written.Kind,
            Part = written.Part ?? said.Part,
            For = written.For ?? said.For,
            Training = written.Training ?? said.Training,
            // Days the coach has settled stay settled while the list repeats its doubt about them.
            Provisional = written.Provisional && (said.Provisional || written.Days != said.Days),
            Place = written.Place ?? said.Place,
            Legs = written.Legs ?? said.Legs,
            Note = written.Note ?? said.Note,
            Source = Listed(known.Source, written.Source),
        };
        return (Joined(new Hands<Event>(said, says, known, ListFirst: false)), Joined(new Hands<Event>(said, says, known, ListFirst: true)));
    }

    private static Event Joined(Hands<Event> hands)
    {
        return (hands.Stands with
        {
            Days = When(item => item.Days),
            Kind = hands.Of(item => item.Kind),
            Part = When(item => item.Part),
            For = hands.Of(item => item.For),
            Training = hands.Of(item => item.Training),
            Provisional = When(item => item.Provisional),
            Place = hands.Of(item => item.Place),
            Legs = When(item => item.Legs),
            Note = hands.Of(item => item.Note),
            Source = hands.Says.Source,
        }).ListedAs(hands.Says);

        // Part, doubt and legs are those of its days.
        T When<T>(Func<Event, T> field) => hands.Of(field, item => item.Days);
    }

    public static (TestDay Ours, TestDay Theirs) Of(TestDay known, TestDay written)
    {
        var said = known.AsListed();
        var says = said with { Day = written.Day, Part = written.Part ?? said.Part, For = written.For ?? said.For, Source = Listed(known.Source, written.Source) };
        return (Joined(new Hands<TestDay>(said, says, known, ListFirst: false)), Joined(new Hands<TestDay>(said, says, known, ListFirst: true)));
    }

    private static TestDay Joined(Hands<TestDay> hands) => (hands.Stands with
    {
        Day = hands.Of(test => test.Day),
        Part = hands.Of(test => test.Part, test => test.Day),
        For = hands.Of(test => test.For),
        Source = hands.Says.Source,
    }).ListedAs(hands.Says);

    private static EventSource? Listed(EventSource? known, EventSource? written) => known is null ? written : known with { Vanished = false, Listed = null };
}
