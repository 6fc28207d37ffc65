using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Read.Events;

/// <summary>An event or test day, of a list or of the season, as far as the two are compared.</summary>
/// <param name="Name">What a list calls it.</param>
/// <param name="Kind">Null for test days.</param>
/// <param name="Days">Null for a row that waits for an answer.</param>
/// <param name="Source">Null for one entered by hand, and for rows.</param>
/// <param name="Line">A row's physical line.</param>
internal sealed record Entry<T>(T Of, string Name, EventKind? Kind, DaySpan? Days, string? For, EventSource? Source = null, int Line = 0)
{
    /// <summary>As its list last had it.</summary>
    public Entry<T> AsListed => Source?.Listed is { } listed ? this with { Kind = listed.Kind, Days = listed.Days, For = listed.For } : this;

    public bool IsNamed(string name) => Spelling.Same(Name, name);
}

/// <summary>A row's entry and the known one it is.</summary>
/// <param name="Known">Null for a new entry.</param>
/// <param name="Ask">The open question whether it is one of the candidates.</param>
/// <param name="Candidates">Known entries that wait for an answer, and so have not vanished.</param>
internal sealed record EntryPair<TRow, TKnown>(Entry<TRow> Row, Entry<TKnown>? Known, string? Ask, IReadOnlyList<Entry<TKnown>> Candidates);

/// <summary>Finds the known entry of each entry of a list; each known one is found once.</summary>
internal static class EntryIdentity
{
    /// <summary>Days; what moves further is rather another one of its name: the autumn's half-term and the spring's.</summary>
    private const int FarDays = 28;

    public static List<EntryPair<TRow, TKnown>> Find<TRow, TKnown>(IEnumerable<Entry<TRow>> rows, IEnumerable<Entry<TKnown>> known, Asker asker)
    {
        var pairs = rows.Select(row => new EntryPair<TRow, TKnown>(row, null, null, [])).ToList();
        var open = known.ToList();
        // Equal days first, whoever entered them; then what a list had on days nearby. Each as its list last had it, then as it stands.
        Pair(pairs, open, entry => entry.AsListed, HasDays);
        Pair(pairs, open, entry => entry, HasDays);
        Pair(pairs, open, entry => entry.AsListed, IsNear);
        Pair(pairs, open, entry => entry, IsNear);
        for (var i = 0; i < pairs.Count; i++)
            if (pairs[i].Known is null) pairs[i] = Asked(pairs[i].Row, open, asker);
        return pairs;
    }

    private static bool HasDays<TRow, TKnown>(Entry<TRow> row, Entry<TKnown> known) => row.Days == known.Days && AreOneGroup(row.For, known.For);

    private static bool IsNear<TRow, TKnown>(Entry<TRow> row, Entry<TKnown> known) => known.Source is not null && Apart(row.Days!.Value, known.Days!.Value) <= FarDays;

    // Of several that fit the nearest, then the one of a list, then the one of its kind.
    private static void Pair<TRow, TKnown>(List<EntryPair<TRow, TKnown>> pairs, List<Entry<TKnown>> open, Func<Entry<TKnown>, Entry<TKnown>> state, Func<Entry<TRow>, Entry<TKnown>, bool> fits)
    {
        var fitting = pairs.Select((pair, index) => (pair, index)).Where(p => p.pair.Known is null && p.pair.Row.Days is not null)
            .SelectMany(p => open.Where(entry => entry.IsNamed(p.pair.Row.Name) && fits(p.pair.Row, state(entry))).Select(entry => (p.pair.Row, p.index, entry, State: state(entry))))
            .OrderBy(p => Math.Abs(p.Row.Days!.Value.First.DayNumber - p.State.Days!.Value.First.DayNumber)).ThenBy(p => p.entry.Source is null).ThenBy(p => p.Row.Kind != p.State.Kind).ToList();
        foreach (var (_, index, entry, _) in fitting)
            if (pairs[index].Known is null && open.Remove(entry)) pairs[index] = pairs[index] with { Known = entry };
    }

    private static bool AreOneGroup(string? one, string? other) => one is null || other is null || Spelling.Same(one, other);

    private static int Apart(DaySpan one, DaySpan other) => Math.Max(0, Math.Max(one.First.DayNumber - other.Last.DayNumber, other.First.DayNumber - one.Last.DayNumber));

    // What is left over and has the name, or the kind and the days, may be the same after all.
    private static EntryPair<TRow, TKnown> Asked<TRow, TKnown>(Entry<TRow> row, List<Entry<TKnown>> open, Asker asker)
    {
        if (row.Days is not { } days) return new(row, null, null, [.. open.Where(entry => entry.IsNamed(row.Name))]);
        var candidates = open.Where(entry => entry.IsNamed(row.Name) || IsAlike(row, entry.AsListed) || IsAlike(row, entry)).Take(10).ToList();
        if (candidates.Count == 0) return new(row, null, null, []);
        var options = candidates.Select((entry, i) => new AnswerOption(string.Create(CultureInfo.InvariantCulture, $"same-{i + 1}"), Sentences.Say("ask.entry.same", entry.Name, entry.Days!.Value.First, entry.Days.Value.Last)));
        var asked = asker.Ask("entry", $"{Spelling.Fold(row.Name)}|{days}", [row.Line], options.Prepend(Asker.Option("entry", "new")), [row.Name, days.First, days.Last], name: "Q-identity");
        if (asked.IsOpen) return new(row, null, asked.Id, candidates);
        if (asked.Answer == "new") return new(row, null, null, []);
        var chosen = candidates[int.Parse(asked.Answer!["same-".Length..], CultureInfo.InvariantCulture) - 1];
        open.Remove(chosen);
        return new(row, chosen, null, []);
    }

    private static bool IsAlike<TRow, TKnown>(Entry<TRow> row, Entry<TKnown> known) => row.Kind is not null && known.Kind == row.Kind && known.Days == row.Days;
}
