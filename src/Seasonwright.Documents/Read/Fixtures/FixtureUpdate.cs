using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// A list compared with the matches a season knows. The same match is found by, in this order: the list's own number; competition, round,
/// home and away; competition, home and away on the same day; competition, home and away if they name one match on both sides; else it is asked.
/// Moved matches are moved, vanished ones marked (only where the list holds others of their competition), none is doubled or deleted, and a list read a second time changes nothing.
/// </summary>
/// <param name="Changes">Known matches that came from a list, and the list's rows: by row, then the vanished ones by day.</param>
/// <param name="Questions">Open questions of the comparison; those of the list stay with the list.</param>
public sealed record FixtureUpdate(ValueList<FixtureChange> Changes, ValueList<Question> Questions, ValueList<Answered> Answered)
{
    /// <param name="known">All matches of the season, wherever they lie and whatever they came from.</param>
    /// <param name="list">A list that is not blocked; of a blocked one nothing is written.</param>
    /// <param name="answers">What has been answered so far.</param>
    public static FixtureUpdate Compare(IEnumerable<Match> known, FixtureList list, Answers? answers = null)
    {
        var matches = known.ToList();
        var asker = new Asker(answers ?? Answers.None);
        if (list.IsBlocked) return new(list.Rows.Select(row => new FixtureChange(ChangeKind.Asked, row, null, null, ValueList<FieldChange>.Empty, ValueList<string>.Empty)).ToValueList(), asker.Open, asker.Answered);
        var pairs = FixtureIdentity.Find(list, matches, asker);
        var changes = pairs.Select(pair => Change(pair, list, asker)).ToList();
        var found = pairs.Select(pair => pair.Known?.Id).OfType<MatchId>().Concat(pairs.SelectMany(pair => pair.Candidates)).ToHashSet();
        // A cup list taken in beside the league's says nothing about league matches: only a competition of which others are found again can lose one.
        var again = pairs.Where(pair => pair.Known?.Source is not null).Select(pair => CompetitionOf(pair.Known!)).ToHashSet(StringComparer.Ordinal);
        changes.AddRange(matches.Where(match => match.Source is not null && !found.Contains(match.Id) && again.Contains(CompetitionOf(match))).OrderBy(match => match.Day).ThenBy(match => match.Id.Text, StringComparer.Ordinal).Select(Vanished));
        return new(changes.ToValueList(), asker.Open, asker.Answered);
    }

    private static string CompetitionOf(Match match) => Spelling.Fold(match.Competition ?? "");

    private static FixtureChange Vanished(Match known) => known.Source is { Vanished: true }
        ? new(ChangeKind.Unchanged, null, known, known, ValueList<FieldChange>.Empty, ValueList<string>.Empty)
        : new(ChangeKind.Vanished, null, known, known with { Source = known.Source! with { Vanished = true } }, ValueList<FieldChange>.Empty, ValueList<string>.Empty);

    private static FixtureChange Change(FixturePair pair, FixtureList list, Asker asker)
    {
        var (row, known) = (pair.Row, pair.Known);
        if (pair.Ask is { } id) return new(ChangeKind.Asked, row, known, null, ValueList<FieldChange>.Empty, new([id]));
        var kinds = list.QuestionsOf(row).Select(question => question.Kind).ToList();
        if (kinds.Contains("Q-repeat", StringComparer.Ordinal)) return new(ChangeKind.Asked, row, known, null, ValueList<FieldChange>.Empty, ValueList<string>.Empty);
        var written = FixtureImport.Match(row, kinds, known?.Id ?? new MatchId("new"));
        if (known is null) return new(ChangeKind.Added, row, null, written, ValueList<FieldChange>.Empty, ValueList<string>.Empty);
        var (merged, ask) = Merge(known, written, row, asker);
        var fields = FieldChanges.Between(known, merged);
        return new(KindOf(known, merged, fields), row, known, merged, fields, ask is null ? ValueList<string>.Empty : new([ask]));
    }

    // What the list says wins; what it leaves out stays as it is, and so does what only the coach can say.
    private static (Match Match, string? Ask) Merge(Match known, Match written, FixtureRow row, Asker asker)
    {
        var isMoved = written.Day is not null && known.Day is not null && written.Day != known.Day;
        var (result, ask) = (written.Result ?? known.Result, (string?)null);
        if (isMoved && known.Result is { } lost && row.Result is null)
        {
            var asked = asker.Ask("lost-result", known.Source?.Id ?? row.NaturalKey, [row.Line], [Asker.Option("lost-result", "keep"), Asker.Option("lost-result", "drop")], [row.Line, row.Opponent ?? "?", lost], "keep");
            if (asked.Answer == "drop") result = null;
            ask = asked.IsOpen ? asked.Id : null;
        }
        var status = Status(known, written);
        // An undated row of a match that has a day says nothing about the day.
        var keepsDay = written.Day is null && known.Day is not null;
        return (known with
        {
            Day = keepsDay ? known.Day : written.Day,
            LastDay = keepsDay ? known.LastDay : written.LastDay,
            KickOff = written.KickOff ?? (isMoved ? null : known.KickOff),
            Opponent = written.Opponent ?? known.Opponent,
            Venue = written.Venue ?? known.Venue,
            Competition = written.Competition ?? known.Competition,
            Round = written.Round ?? known.Round,
            Place = written.Place ?? (written.Venue == known.Venue ? known.Place : null),
            Status = keepsDay && !written.IsOff ? known.Status : status,
            Condition = status == MatchStatus.Conditional ? known.Condition ?? written.Condition : known.Condition,
            Series = written.Series ?? known.Series,
            Result = result,
            Source = new MatchSource(written.Source?.Id ?? known.Source?.Id),
        }, ask);
    }

    // A chain the coach has settled stays settled however often the list repeats its condition.
    private static MatchStatus Status(Match known, Match written)
    {
        var listIsWeaker = written.Status is MatchStatus.Conditional or MatchStatus.Provisional or MatchStatus.Window;
        var isSettled = known.Status is MatchStatus.Confirmed or MatchStatus.Cancelled && known.Condition is not null || known.Status == MatchStatus.Confirmed && written.Status == MatchStatus.Provisional;
        return listIsWeaker && isSettled && known.Day == written.Day ? known.Status : written.Status;
    }

    private static ChangeKind KindOf(Match known, Match merged, ValueList<FieldChange> fields)
    {
        bool Has(string field) => fields.Any(change => change.Field == field);
        if (fields.Count == 0) return ChangeKind.Unchanged;
        if (Has("status") && merged.Status == MatchStatus.Postponed) return ChangeKind.Postponed;
        if (Has("status") && merged.Status == MatchStatus.Cancelled) return ChangeKind.Cancelled;
        if (Has("day") || Has("lastDay")) return ChangeKind.Moved;
        if (Has("venue") && known.Venue is not null) return ChangeKind.VenueSwapped;
        if (Has("kickOff")) return known.KickOff is null ? ChangeKind.TimeKnown : ChangeKind.Time;
        return ChangeKind.Changed;
    }
}
