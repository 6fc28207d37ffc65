using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.HandOut.Calendars;

/// <summary>
/// What of a calendar others may hold already: it numbers the entries, so that a changed one counts as newer than the one they
/// have (SEQUENCE, RFC 5545, 3.8.7.4), and says what they hold that is no more.
/// </summary>
public abstract class CalendarRevisions
{
    /// <summary>Nobody holds anything yet.</summary>
    public static CalendarRevisions None { get; } = new NothingHeld();

    /// <summary>
    /// Numbered by a log: each entry of the log that touched what an entry of the calendar says raises its number, moves and undos
    /// alike. A postponed match whose day is still known is called off on that day once it was touched a second time.
    /// </summary>
    /// <param name="touched">How many entries of the log touched a fact of the season or the setup.</param>
    public static CalendarRevisions Counted(Func<Key, int> touched) => new CountedByLog(touched);

    /// <summary>
    /// Numbered by the calendar that this one replaces: what is unchanged keeps its number, what has changed gets the next one, and
    /// what is no more stays, called off, so that it goes from the calendars of those who hold it.
    /// </summary>
    /// <param name="previous">The text of that calendar. One that was not written for this season is a problem.</param>
    /// <param name="file">Its name, for the problem.</param>
    public static RevisionsReading After(string previous, string file, SeasonId season) =>
        HeldCalendar.Read(previous, season) is { } held ? new(held, null) : new(null, Problem.Of("calendar-foreign", file, null, null));

    internal abstract IEnumerable<RevisedEntry> Revise(IReadOnlyList<PlannedEntry> planned);

    private sealed class NothingHeld : CalendarRevisions
    {
        internal override IEnumerable<RevisedEntry> Revise(IReadOnlyList<PlannedEntry> planned) =>
            planned.Where(plan => !plan.IsTaken).Select(plan => new RevisedEntry(plan.Entry, 0));
    }

    private sealed class CountedByLog(Func<Key, int> touched) : CalendarRevisions
    {
        internal override IEnumerable<RevisedEntry> Revise(IReadOnlyList<PlannedEntry> planned) =>
            from plan in planned
            let sequence = Math.Max(0, plan.From.Sum(touched) - 1)
            where !plan.IsTaken || sequence > 0
            select new RevisedEntry(plan.Entry, sequence);
    }
}
