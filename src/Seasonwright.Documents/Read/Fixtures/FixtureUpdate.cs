using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// A list compared with the matches a season knows. The same match is found by, in this order: the list's own number; competition, round,
/// home and away; competition, home and away on the same day; competition, home and away if they name one match on both sides; else it is asked.
/// Moved matches are moved, vanished ones marked (only where the list holds others of their competition), none is doubled or deleted, and a list read a second time changes nothing:
/// what it says is compared with what it said last, not with what the coach has done since.
/// </summary>
/// <param name="Changes">Known matches that came from a list, and the list's rows: by row, then the vanished ones by day.</param>
/// <param name="Questions">Open questions of the comparison; those of the list stay with the list.</param>
/// <param name="Notes">What is odd once the list is in, in words: two matches on one day, a played match on another day. Nothing waits for it.</param>
public sealed record FixtureUpdate(ValueList<FixtureChange> Changes, ValueList<Question> Questions, ValueList<Answered> Answered, ValueList<string> Notes)
{
    /// <param name="known">All matches of the season, wherever they lie and whatever they came from.</param>
    /// <param name="list">A list that is not blocked; of a blocked one nothing is written.</param>
    /// <param name="answers">What has been answered so far.</param>
    public static FixtureUpdate Compare(IEnumerable<Match> known, FixtureList list, Answers? answers = null)
    {
        var matches = known.ToList();
        var asker = new Asker(answers ?? Answers.None);
        if (list.IsBlocked) return new(list.Rows.Select(row => new FixtureChange(ChangeKind.Asked, row, null, null, ValueList<FieldChange>.Empty, ValueList<string>.Empty)).ToValueList(), asker.Open, asker.Answered, ValueList<string>.Empty);
        var pairs = FixtureIdentity.Find(list, matches, asker);
        var changes = pairs.Select(pair => Change(pair, list, asker)).ToList();
        var found = pairs.Select(pair => pair.Known?.Id).OfType<MatchId>().Concat(pairs.SelectMany(pair => pair.Candidates)).ToHashSet();
        // A cup list taken in beside the league's says nothing about league matches: only a competition of which others are found again can lose one.
        var again = pairs.Where(pair => pair.Known?.Source is not null).Select(pair => CompetitionOf(pair.Known!)).ToHashSet(StringComparer.Ordinal);
        changes.AddRange(matches.Where(match => match.Source is not null && !found.Contains(match.Id) && again.Contains(CompetitionOf(match))).OrderBy(match => match.Day).ThenBy(match => match.Id.Text, StringComparer.Ordinal).Select(Vanished));
        return new(changes.ToValueList(), asker.Open, asker.Answered, FixtureNotes.Of(matches, changes));
    }

    private static string CompetitionOf(Match match) => Spelling.Fold(match.AsListed().Competition ?? "");

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
        if (merged is null) return new(ChangeKind.Asked, row, known, null, ValueList<FieldChange>.Empty, new([ask!]));
        var fields = FieldChanges.Between(known, merged);
        return new(KindOf(known, merged, fields), row, known, merged, fields, ask is null ? ValueList<string>.Empty : new([ask]));
    }

    // What the list says anew wins over what it said before; what the coach has done stays where the list repeats itself; where both have changed the same, it is asked.
    private static (Match? Match, string? Ask) Merge(Match known, Match written, FixtureRow row, Asker asker)
    {
        var before = known.AsListed();
        var says = Said(before, written);
        var (ours, theirs) = (Joined(new(before, says, known, ListFirst: false)), Joined(new(before, says, known, ListFirst: true)));
        var merged = theirs;
        if (ours != theirs)
        {
            var both = BothChanged.Ask(asker, "both-changed", known.Source?.Id ?? row.NaturalKey, FieldChanges.Between(ours, theirs), row.Line, row.Opponent ?? "?");
            if (both.IsOpen) return (null, both.Id);
            if (both.Answer == "ours") merged = ours;
        }
        string? ask = null;
        if (merged.Day is not null && known.Day is not null && merged.Day != known.Day && known.Result is { } lost && row.Result is null)
        {
            var asked = asker.Ask("lost-result", known.Source?.Id ?? row.NaturalKey, [row.Line], [Asker.Option("lost-result", "keep"), Asker.Option("lost-result", "drop")], [row.Line, row.Opponent ?? "?", lost], "keep");
            if (asked.Answer == "drop") (merged, says) = (merged with { Result = null }, says with { Result = null });
            ask = asked.IsOpen ? asked.Id : null;
        }
        return (merged.ListedAs(says), ask);
    }

    // What a list leaves out stays as the list had it, and so does what only the coach can say.
    private static Match Said(Match listed, Match written)
    {
        var isMoved = written.Day is not null && listed.Day is not null && written.Day != listed.Day;
        var status = Status(listed, written);
        // An undated row of a match that has a day says nothing about the day.
        var keepsDay = written.Day is null && listed.Day is not null;
        return listed with
        {
            Day = keepsDay ? listed.Day : written.Day,
            LastDay = keepsDay ? listed.LastDay : written.LastDay,
            KickOff = written.KickOff ?? (isMoved ? null : listed.KickOff),
            Opponent = written.Opponent ?? listed.Opponent,
            Venue = written.Venue ?? listed.Venue,
            Competition = written.Competition ?? listed.Competition,
            Round = written.Round ?? listed.Round,
            Place = written.Place ?? (written.Venue == listed.Venue ? listed.Place : null),
            Status = keepsDay && !written.IsOff ? listed.Status : status,
            Condition = status == MatchStatus.Conditional ? listed.Condition ?? written.Condition : listed.Condition,
            Series = written.Series ?? listed.Series,
            Result = written.Result ?? listed.Result,
            Source = new MatchSource(written.Source?.Id ?? listed.Source?.Id),
        };
    }

    /// <summary>The match as it stands, with what the list says otherwise than it did.</summary>
    private static Match Joined(Hands<Match> hands)
    {
        var status = When(match => match.Status);
        var condition = hands.Stands.Condition;
        return hands.Stands with
        {
            Day = When(match => match.Day),
            LastDay = When(match => match.LastDay),
            KickOff = When(match => match.KickOff),
            Opponent = hands.Of(match => match.Opponent),
            Venue = hands.Of(match => match.Venue),
            Competition = hands.Of(match => match.Competition),
            Round = hands.Of(match => match.Round),
            Place = hands.Of(match => match.Place),
            Status = status,
            Condition = status == MatchStatus.Conditional ? condition ?? hands.Says.Condition : condition,
            Series = hands.Of(match => match.Series),
            Result = hands.Of(match => match.Result),
            Source = hands.Says.Source,
        };

        // Day, clock and state belong together.
        T When<T>(Func<Match, T> field) => hands.Of(field, match => (match.Day, match.LastDay));
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
