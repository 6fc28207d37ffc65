using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// A list compared with the events and test days a season knows. The same entry is found by its name and days, whoever entered it; then by its name
/// on days nearby if a list brought it; what else may be the same is asked. Moved entries are moved, none is doubled or deleted, and a list read a
/// second time changes nothing: what it says is compared with what it said last, not with what the coach has done since. What a list no longer holds is marked, once more than half of that list is found again: anything else is another list.
/// </summary>
/// <param name="Changes">Events of the list, in its order, one for each run of days; then the vanished ones by day.</param>
/// <param name="TestDays">The same for test days.</param>
/// <param name="Questions">Open questions of the comparison; those of the list stay with the list.</param>
public sealed record EventUpdate(ValueList<EntryChange<EventRow, Event>> Changes, ValueList<EntryChange<TestDayRow, TestDay>> TestDays, ValueList<Question> Questions, ValueList<Answered> Answered)
{
    /// <param name="knownEvents">All events of the season, wherever they lie and whatever they came from.</param>
    /// <param name="knownTests">All its test days.</param>
    /// <param name="list">A list that is not blocked; of a blocked one nothing is written.</param>
    /// <param name="answers">What has been answered so far.</param>
    public static EventUpdate Compare(IEnumerable<Event> knownEvents, IEnumerable<TestDay> knownTests, EventList list, Answers? answers = null)
    {
        var asker = new Asker(answers ?? Answers.None);
        if (list.IsBlocked)
            return new(list.Rows.Select(row => Waits<EventRow, Event>(row, null, [])).ToValueList(), list.TestDays.Select(row => Waits<TestDayRow, TestDay>(row, null, [])).ToValueList(), asker.Open, asker.Answered);
        var events = knownEvents.Select(item => new Entry<Event>(item, item.Source?.Entry ?? item.Title, item.Kind, item.Days, item.For, item.Source)).ToList();
        var tests = knownTests.Select(test => new Entry<TestDay>(test, test.Source?.Entry ?? test.Battery, null, Core.Calendar.DaySpan.Of(test.Day), test.For, test.Source)).ToList();
        var eventPairs = EntryIdentity.Find(list.Rows.SelectMany(EventImport.Entries), events, asker);
        var testPairs = EntryIdentity.Find(list.TestDays.SelectMany(EventImport.Entries), tests, asker);
        var (foundEvents, foundTests) = (Found(eventPairs), Found(testPairs));
        var later = LaterStates([.. events.Select(entry => (entry.Source, foundEvents.Contains(entry))), .. tests.Select(entry => (entry.Source, foundTests.Contains(entry)))]);
        return new(
            eventPairs.Select(pair => Change(pair, EventImport.Event, EntryMerge.Of, EntryFields.Between, list, asker)).Concat(Vanished<EventRow, Event>(events, foundEvents, later, (item, source) => item with { Source = source })).ToValueList(),
            testPairs.Select(pair => Change(pair, EventImport.TestDay, EntryMerge.Of, EntryFields.Between, list, asker)).Concat(Vanished<TestDayRow, TestDay>(tests, foundTests, later, (test, source) => test with { Source = source })).ToValueList(),
            asker.Open, asker.Answered);
    }

    private static EntryChange<TRow, TEntry> Change<TRow, TEntry>(EntryPair<TRow, TEntry> pair, Func<Entry<TRow>, string, TEntry> write, Func<TEntry, TEntry, (TEntry Ours, TEntry Theirs)> merge, Func<TEntry, TEntry, ValueList<FieldChange>> between, EventList list, Asker asker)
        where TRow : class
        where TEntry : class
    {
        if (pair.Ask is not null || pair.Row.Days is null) return Waits(pair.Row.Of, pair.Candidates is [var only] ? only.Of : null, pair.Ask is { } id ? [id] : []);
        var written = write(pair.Row, list.Name);
        if (pair.Known?.Of is not { } known) return new(ChangeKind.Added, pair.Row.Of, null, written, ValueList<FieldChange>.Empty, ValueList<string>.Empty);
        var (ours, merged) = merge(known, written);
        if (!ours.Equals(merged))
        {
            var both = BothChanged.Ask(asker, "both-changed-entry", Spelling.Fold(pair.Row.Name), between(ours, merged), pair.Row.Line, pair.Row.Name);
            if (both.IsOpen) return Waits(pair.Row.Of, known, [both.Id]);
            if (both.Answer == "ours") merged = ours;
        }
        var fields = between(known, merged);
        var kind = fields.Count == 0 ? ChangeKind.Unchanged : fields.Any(field => field.Field is "day" or "lastDay") ? ChangeKind.Moved : ChangeKind.Changed;
        return new(kind, pair.Row.Of, known, merged, fields, ValueList<string>.Empty);
    }

    private static EntryChange<TRow, TEntry> Waits<TRow, TEntry>(TRow row, TEntry? known, IEnumerable<string> ask)
        where TRow : class
        where TEntry : class => new(ChangeKind.Asked, row, known, null, ValueList<FieldChange>.Empty, ask.ToValueList());

    private static HashSet<Entry<TEntry>> Found<TRow, TEntry>(List<EntryPair<TRow, TEntry>> pairs) =>
        [.. pairs.Select(pair => pair.Known).OfType<Entry<TEntry>>(), .. pairs.SelectMany(pair => pair.Candidates)];

    /// <summary>Earlier lists of which this one is a later state.</summary>
    private static HashSet<string> LaterStates(IEnumerable<(EventSource? Source, bool IsFound)> entries) => entries
        .Where(entry => entry.Source is not null && (entry.IsFound || !entry.Source.Vanished)).GroupBy(entry => entry.Source!.List, StringComparer.Ordinal)
        .Where(list => list.Count(entry => entry.IsFound) * 2 > list.Count()).Select(list => list.Key).ToHashSet(StringComparer.Ordinal);

    private static IEnumerable<EntryChange<TRow, TEntry>> Vanished<TRow, TEntry>(List<Entry<TEntry>> known, HashSet<Entry<TEntry>> found, HashSet<string> later, Func<TEntry, EventSource, TEntry> with)
        where TRow : class
        where TEntry : class => known
        .Where(entry => entry.Source is not null && later.Contains(entry.Source.List) && !found.Contains(entry)).OrderBy(entry => entry.Days)
        .Select(entry => new EntryChange<TRow, TEntry>(entry.Source!.Vanished ? ChangeKind.Unchanged : ChangeKind.Vanished, null, entry.Of, with(entry.Of, entry.Source with { Vanished = true }), ValueList<FieldChange>.Empty, ValueList<string>.Empty));
}
