using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>From a list and its comparison to the edit that takes it in.</summary>
public static class FixtureImport
{
    /// <summary>The edit that writes every change of an update, or null when there is nothing to write (all unchanged, blocked, or all waiting for answers).</summary>
    /// <param name="list">The list read.</param>
    /// <param name="update">The list compared with the season's matches; with none for a new season.</param>
    /// <param name="ids">The id of an added match; fresh ones at the page, natural ones (from <see cref="FixtureRow.NaturalKey"/>) at the command line. Called once per added row.</param>
    public static ImportFixtures? Edit(FixtureList list, FixtureUpdate update, Func<FixtureRow, MatchId> ids)
    {
        var added = update.Changes.Where(change => change is { Kind: ChangeKind.Added, IsWritten: true }).Select(change => (change.Row!.SourceId, Match: change.Match! with { Id = ids(change.Row!) })).ToList();
        var changed = update.Changes.Where(change => change.IsWritten && change.Kind != ChangeKind.Added).Select(change => (change.Row?.SourceId, Match: change.Match!)).ToList();
        var bySource = update.Changes.Where(change => change.Known?.Source?.Id is not null).Select(change => (Id: change.Known!.Source!.Id, change.Known.Id)).Concat(added.Select(a => (Id: a.SourceId, a.Match.Id)))
            .Where(entry => entry.Item1 is not null).GroupBy(entry => entry.Item1!, StringComparer.OrdinalIgnoreCase).ToDictionary(group => group.Key, group => group.First().Item2, StringComparer.OrdinalIgnoreCase);
        var matches = changed.Concat(added).Select(entry => Linked(entry.Match, bySource)).ToValueList();
        return matches.Count == 0 ? null : new ImportFixtures(matches, Spelling.Cut(list.Name, LongestName));
    }

    /// <summary>A row as a match, in its weaker form where questions are open.</summary>
    /// <param name="asks">Kinds of the row's open questions.</param>
    internal static Match Match(FixtureRow row, IReadOnlyCollection<string> asks, MatchId id)
    {
        bool Asks(params string[] kinds) => kinds.Any(kind => asks.Contains(kind, StringComparer.Ordinal));
        // Core knows no undated confirmed match: without a day it is planned and not yet placed.
        var status = row.Day is null && row.Status is MatchStatus.Confirmed or MatchStatus.Provisional && row.Day is null ? MatchStatus.Postponed
            : row.Status == MatchStatus.Confirmed && Asks("Q-weekday", "Q-year", "Q-date", "Q-blank-dates", "Q-signs") ? MatchStatus.Provisional
            : row.Status;
        return new Match(id, row.Day, row.LastDay,
            Asks("Q-midnight", "Q-am", "Q-time") ? null : row.KickOff,
            Opponent: Short(row.Club), Venue: Asks("Q-sides") ? null : row.Venue, Competition: Short(row.Competition), Round: Short(row.Round), Place: Short(row.Place),
            Importance: row.Importance,
            Status: status,
            Condition: row.Condition is null || status != MatchStatus.Conditional ? null : new Condition(null, NeedsOf(row.Condition), Short(row.Condition)),
            Series: row.Series,
            Result: Asks("Q-score-order", "Q-sides") ? null : row.Result,
            Note: row.Remarks is { } remarks && remarks != row.Condition && !Formula.Is(remarks) ? Short(remarks) : null,
            Source: new MatchSource(row.SourceId));
    }

    // "if we win LC-1": the match whose number stands in the words decides.
    private static Match Linked(Match match, Dictionary<string, MatchId> bySource)
    {
        if (match.Condition is not { On: null, Words: { } words } condition) return match;
        var named = words.Split([' ', ',', ';', '.', '(', ')'], StringSplitOptions.RemoveEmptyEntries).Where(bySource.ContainsKey).Select(word => bySource[word]).Where(id => id != match.Id).Distinct().ToList();
        return named.Count == 1 ? match with { Condition = condition with { On = named[0] } } : match;
    }

    private static Outcome NeedsOf(string words) => Losing.Any(word => words.Contains(word, StringComparison.OrdinalIgnoreCase)) ? Outcome.Lost : Outcome.Won;

    private static readonly string[] Losing = ["lose", "lost", "verlieren", "verloren", "niederlage"];

    // Core limits texts; what is longer is cut where it only tells.
    private static string? Short(string? text) => text is null ? null : Spelling.Cut(text, LongestText);

    // As much as Core takes.
    private const int LongestText = 2000;

    private const int LongestName = 120;
}
