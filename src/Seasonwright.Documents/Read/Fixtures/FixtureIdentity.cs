using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A row and the known match it is.</summary>
/// <param name="Known">Null for a new match.</param>
/// <param name="Ask">The open question whether it is one of the candidates.</param>
/// <param name="Candidates">Known matches that wait for that question, and so have not vanished.</param>
internal sealed record FixturePair(FixtureRow Row, Match? Known, string? Ask, IReadOnlyList<MatchId> Candidates);

/// <summary>Finds the known match of each row; each known match is found once.</summary>
internal static class FixtureIdentity
{
    public static List<FixturePair> Find(FixtureList list, List<Match> known, Asker asker)
    {
        var pairs = list.Rows.Select(row => new FixturePair(row, null, null, [])).ToList();
        var open = known.ToList();
        Pair(pairs, open, row => row.SourceId, match => match.Source?.Id, (row, match) => !AreTwo(row, match.AsListed()));
        // By what the list said of it last, then by how it stands: the coach may have put right by hand what the list now puts right too.
        PairByWords(pairs, open, match => match.AsListed());
        PairByWords(pairs, open, match => match);
        var hasIds = list.Rows.Any(row => row.SourceId is not null);
        for (var i = 0; i < pairs.Count; i++)
            if (pairs[i].Known is null) pairs[i] = Asked(pairs[i].Row, hasIds, known, open, asker);
        return pairs;
    }

    private static void PairByWords(List<FixturePair> pairs, List<Match> open, Func<Match, Match> state)
    {
        Pair(pairs, open, row => row.Round is null ? null : Key(row.Competition, row.Round, row.Club, row.Venue), known => state(known) is { Round: { } round } match ? Key(match.Competition, round, match.Opponent, match.Venue) : null, Fits);
        Pair(pairs, open, row => row.Day is null ? null : Key(row.Competition, $"{row.Day:O}", row.Club, row.Venue), known => state(known) is { Day: { } day } match ? Key(match.Competition, $"{day:O}", match.Opponent, match.Venue) : null, Fits);
        Pair(pairs, open, row => Key(row.Competition, "", row.Club, row.Venue), known => state(known) is var match ? Key(match.Competition, "", match.Opponent, match.Venue) : null, Fits);
    }

    // Rows and matches that share a key no other row and no other match has.
    private static void Pair(List<FixturePair> pairs, List<Match> open, Func<FixtureRow, string?> rowKey, Func<Match, string?> matchKey, Func<FixtureRow, Match, bool> fits)
    {
        var rows = pairs.Select((pair, index) => (pair, index)).Where(p => p.pair.Known is null && rowKey(p.pair.Row) is not null).GroupBy(p => rowKey(p.pair.Row)!, StringComparer.Ordinal).Where(group => group.Count() == 1).Select(group => group.Single()).ToList();
        var matches = open.Where(match => matchKey(match) is not null).GroupBy(match => matchKey(match)!, StringComparer.Ordinal).Where(group => group.Count() == 1).ToDictionary(group => group.Key, group => group.Single(), StringComparer.Ordinal);
        foreach (var (pair, index) in rows)
        {
            if (!matches.TryGetValue(rowKey(pair.Row)!, out var match) || !fits(pair.Row, match)) continue;
            pairs[index] = pair with { Known = match };
            open.Remove(match);
        }
    }

    // Two numbers of one list are two matches, whatever else they share.
    private static bool Fits(FixtureRow row, Match match) => row.SourceId is null || match.Source?.Id is null;

    // A list that has numbered its matches anew: the number is known, and everything else is another match.
    private static bool AreTwo(FixtureRow row, Match match) =>
        row.Club is { } club && match.Opponent is { } opponent && !Spelling.Same(club, opponent) && row.Day != match.Day && (row.Round is null || match.Round is null || !Spelling.Same(row.Round, match.Round));

    private static string? Key(string? competition, string part, string? opponent, Venue? venue) =>
        opponent is null ? null : string.Join('|', Spelling.Fold(competition ?? ""), Spelling.Fold(part), Spelling.Fold(opponent), venue);

    // What is left over and looks alike may be the same match after all.
    private static FixturePair Asked(FixtureRow row, bool hasIds, List<Match> known, List<Match> open, Asker asker)
    {
        var pool = row.SourceId is null && hasIds ? known : open;
        var renumbered = open.Where(match => row.SourceId is { } id && match.Source?.Id == id).ToList();
        var candidates = renumbered.Count > 0 ? renumbered : pool.Where(match => (row.SourceId is null || match.Source?.Id is null) && MayBe(row, match, sameVenue: row.SourceId is null && hasIds)).Take(10).ToList();
        if (candidates.Count == 0) return new(row, null, null, []);
        var kind = row.SourceId is null && hasIds ? "no-id" : "identity";
        var options = candidates.Select((match, i) => new AnswerOption(i == 0 ? "same" : FormattableString.Invariant($"same-{i + 1}"), Sentences.Say("ask.identity.same", match.Day, match.Opponent, match.Round)));
        var asked = asker.Ask(kind, row.NaturalKey, [row.Line], options.Prepend(Asker.Option("identity", "new")), [row.Line, row.Opponent ?? "?"]);
        if (asked.IsOpen) return new(row, null, asked.Id, [.. candidates.Where(open.Contains).Select(match => match.Id)]);
        if (asked.Answer == "new") return new(row, null, null, []);
        var chosen = candidates[asked.Answer == "same" ? 0 : int.Parse(asked.Answer!["same-".Length..], System.Globalization.CultureInfo.InvariantCulture) - 1];
        // Already told by a row of its own: this row only repeats it.
        return open.Remove(chosen) ? new(row, chosen, null, []) : new(row, null, asked.Id, []);
    }

    private static bool MayBe(FixtureRow row, Match match, bool sameVenue)
    {
        var sameDay = row.Day is not null && row.Day == match.Day;
        if (row.Club is null || match.Opponent is null) return row.Round is { } round && match.Round is { } other && Spelling.Same(round, other) && Same(row.Competition, match.Competition);
        if (!Spelling.Same(row.Club, match.Opponent)) return false;
        return sameDay || Same(row.Competition, match.Competition) && (!sameVenue || row.Venue == match.Venue);
    }

    private static bool Same(string? one, string? other) => Spelling.Same(one ?? "", other ?? "");
}
