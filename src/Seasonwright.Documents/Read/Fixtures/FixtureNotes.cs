using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>What is odd in a season once a list is in, and may yet be right: it is said, and nothing waits for it.</summary>
internal static class FixtureNotes
{
    /// <param name="known">The matches of the season.</param>
    /// <param name="changes">What the list does to them.</param>
    public static ValueList<string> Of(IEnumerable<Match> known, IReadOnlyList<FixtureChange> changes) => OneDay(known, changes).Concat(changes.Select(Moved).OfType<string>()).ToValueList();

    // Tournaments and double headers exist: only days that the list makes so are told.
    private static IEnumerable<string> OneDay(IEnumerable<Match> known, IReadOnlyList<FixtureChange> changes)
    {
        var written = changes.Where(change => change.IsWritten).ToList();
        var changed = written.Select(change => change.Known?.Id).OfType<MatchId>().ToHashSet();
        var dated = written.Select(change => (Match: change.Match!, IsNew: change.Kind == ChangeKind.Added || change.Known?.Day != change.Match!.Day)).Concat(known.Where(match => !changed.Contains(match.Id)).Select(match => (Match: match, IsNew: false)));
        return dated.Where(entry => entry.Match is { Status: MatchStatus.Confirmed, IsOnOneDay: true, Source: null or { Vanished: false } }).GroupBy(entry => entry.Match.Day!.Value).OrderBy(day => day.Key)
            .Where(day => day.Count() > 1 && day.Any(entry => entry.IsNew)).Select(day => Sentences.Say("note.one-day", day.Key, string.Join(", ", day.Select(entry => Name(entry.Match)).Order(StringComparer.Ordinal))));
    }

    // Where the list no longer has the result it is asked about already.
    private static string? Moved(FixtureChange change) => change is { Known: { Day: { } before, Result: { } result } known, Match.Day: { } after, Row.Result: not null } && before != after
        ? Sentences.Say("note.played-moved", known.Opponent ?? "?", before, result, after) : null;

    private static string Name(Match match) => match.KickOff is { } time ? $"{match.Opponent ?? "?"} {time.ToString("HH:mm", CultureInfo.InvariantCulture)}" : match.Opponent ?? "?";
}
