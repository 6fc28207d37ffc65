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
    /// <param name="versions">The season as it was published before, oldest first: what they said and is no more is called off.</param>
    public static CalendarRevisions Counted(Func<Key, int> touched, IReadOnlyList<Season> versions) => new CountedByLog(touched, versions);

    /// <summary>
    /// Numbered by the calendar that this one replaces: what is unchanged keeps its number, what has changed gets the next one, and
    /// what is no more stays, called off, so that it goes from the calendars of those who hold it.
    /// </summary>
    /// <param name="previous">The text of that calendar. One that was not written for this season is a problem.</param>
    /// <param name="file">Its name, for the problem.</param>
    public static RevisionsReading After(string previous, string file, SeasonId season) =>
        HeldCalendar.Read(previous, season) is { } held ? new(held, null) : new(null, Problem.Of("calendar-foreign", file, null, null));

    /// <param name="plan">The entries of a season, as they are chosen.</param>
    internal abstract IEnumerable<RevisedEntry> Revise(Season season, Func<Season, IReadOnlyList<PlannedEntry>> plan);

    private sealed class NothingHeld : CalendarRevisions
    {
        internal override IEnumerable<RevisedEntry> Revise(Season season, Func<Season, IReadOnlyList<PlannedEntry>> plan) =>
            plan(season).Where(planned => !planned.IsTaken).Select(planned => new RevisedEntry(planned.Entry, 0));
    }

    private sealed class CountedByLog(Func<Key, int> touched, IReadOnlyList<Season> versions) : CalendarRevisions
    {
        internal override IEnumerable<RevisedEntry> Revise(Season season, Func<Season, IReadOnlyList<PlannedEntry>> plan)
        {
            var now = plan(season);
            var there = now.Select(planned => planned.Entry.Uid).ToHashSet(StringComparer.Ordinal);
            var gone = versions.Reverse().SelectMany(plan).Where(planned => !planned.IsTaken && there.Add(planned.Entry.Uid));
            return now.Where(planned => !planned.IsTaken || touched(planned.From[0]) > 1).Select(planned => new RevisedEntry(planned.Entry, Sequence(planned)))
                .Concat(gone.Select(planned => new RevisedEntry(planned.Entry.CalledOff(), Sequence(planned))));
        }

        private int Sequence(PlannedEntry planned) => Math.Max(0, planned.From.Sum(touched) - 1);
    }
}
