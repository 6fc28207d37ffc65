using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>What differs between two states of a season, in dates and names a head coach can read.</summary>
public static class WhatChanged
{
    /// <summary>All of it. Empty when nothing differs.</summary>
    /// <param name="setup">Loads are told in per cent of its normal hard week.</param>
    public static IReadOnlyList<string> Between(Season before, Season after, Setup setup) => [.. Calendar(before, after), .. Shape(before, after, _ => true), .. Weeks(before, after, setup, _ => true)];

    /// <summary>What became of the sessions of some days, one line each, in the order of their days.</summary>
    public static IReadOnlyList<string> Sessions(Season before, Season now, Setup setup, DaySpan days) =>
    [
        .. before.AllSessions.Concat(now.AllSessions).Where(session => days.Contains(session.Day)).Select(session => session.Id).Distinct()
            .Select(id => (Was: before.Session(id), Is: now.Session(id))).Where(pair => !Equals(pair.Was, pair.Is)).OrderBy(pair => (pair.Was ?? pair.Is)!.Day)
            .Select(pair => pair.Is is { } session ? new SetSession(session).Describe(before, setup) : new RemoveSession(pair.Was!.Id).Describe(before, setup)),
    ];

    /// <summary>The season's frame, then one line per match, event, test day, session, note or goal.</summary>
    public static IReadOnlyList<string> Calendar(Season before, Season after)
    {
        var lines = new List<string>();
        var keys = Step.Between(before.Facts, after.Facts).Changes;
        if (before.Days is { } old && after.Days is { } now && old != now)
            lines.Add(Sentences.Say("changed.frame", Day(old.First), Day(old.Last), Day(now.First), Day(now.Last)));

        foreach (var change in keys)
        {
            switch (change.Before ?? change.After)
            {
                case Match { IsOff: false } when change.After is Match { IsOff: true } off: lines.Add(Sentences.Say("changed.off", Sentences.Say("changed.match-off", MatchWords.Of(off), Sentences.Say($"status.{off.Status}")))); break;
                case Match: lines.Add(Thing(change, (Match match) => match.IsOff ? Sentences.Say("changed.match-off", MatchWords.Of(match), Sentences.Say($"status.{match.Status}")) : MatchWords.Of(match))); break;
                case Event: lines.Add(Thing(change, (Event item) => Sentences.Say("changed.event", item.Title, Day(item.Days.First), Day(item.Days.Last)))); break;
                case TestDay: lines.Add(Thing(change, (TestDay test) => Sentences.Say("changed.test", test.Battery, Day(test.Day)))); break;
                case Session: lines.Add(Thing(change, (Session session) => SessionWords.Of(session))); break;
                case Note: lines.Add(Thing(change, (Note note) => Sentences.Say("changed.note", note.Text, Day(note.Days.First)))); break;
                case Goal: lines.Add(Thing(change, (Goal goal) => goal.Measure)); break;
            }
        }

        return lines;
    }

    /// <summary>Phases and blocks, a line for each run of weeks that lies in another one now.</summary>
    /// <param name="which">Which weeks, of the season as it is after.</param>
    public static IReadOnlyList<string> Shape(Season before, Season after, Func<SeasonWeek, bool> which) =>
    [
        .. Runs(before, after, which, "changed.phase", (season, week) => season.PhaseOf(week) is { } run ? RunWords.Of(run.Phase) : null),
        .. Runs(before, after, which, "changed.block", (season, week) => season.BlockOf(week) is { } run ? RunWords.Of(run.Block) : null),
    ];

    /// <summary>What a week itself holds: its kind, load, practices, what is wished of them, and emphasis. A line for each week; weeks side by side that change alike share one.</summary>
    /// <param name="which">Which weeks, of the season as it is after.</param>
    /// <param name="isUndone">What was before was set by the reader's own hand.</param>
    public static IReadOnlyList<string> Weeks(Season before, Season after, Setup setup, Func<SeasonWeek, bool> which, bool isUndone = false)
    {
        var emphasis = Step.Between(before.Facts, after.Facts).Changes.Where(change => change.Key.Facet == SeasonFacets.WeekEmphasis.Name)
            .Select(change => Pair<WeekId, QualityId>.Parse(change.Key.Subject)).ToLookup(pair => pair.First, pair => pair.Second);
        var differing = after.Weeks.Where(which).Select(week => (Week: week, Words: string.Join("; ", Parts(before, after, setup, week, emphasis[week.Id], isUndone)))).Where(week => week.Words.Length > 0);
        return
        [
            .. Joined(differing, (a, b) => a.Week.Number + 1 == b.Week.Number && a.Words == b.Words).Select(run => run is [var (week, words)]
                ? Sentences.Say("changed.week", week.Number, Day(week.Days.First), Day(week.Days.Last), words)
                : Sentences.Say("changed.weeks", run[0].Week.Number, run[^1].Week.Number, Day(run[0].Week.Days.First), Day(run[^1].Week.Days.Last), run[0].Words)),
        ];
    }

    private static IEnumerable<string> Parts(Season before, Season after, Setup setup, SeasonWeek week, IEnumerable<QualityId> emphasis, bool isUndone)
    {
        var (id, known) = (week.Id, before.Week(week.Id) is not null);
        if (Part(isUndone ? "changed.undone.kind" : "changed.part.kind", known ? Kind(before) : null, Kind(after)) is { } kind) yield return kind;
        if (before.TargetOf(id) != after.TargetOf(id)) yield return Part(isUndone ? "changed.undone.load" : "changed.part.load", Load(before), Load(after)) ?? Sentences.Say("changed.part.load-little");
        if (Part("changed.part.practices", known ? Practised(before) : null, Practised(after)) is { } practices) yield return practices;
        if (Part("changed.part.wish", known ? before.PracticeWishOf(id) : null, after.PracticeWishOf(id)) is { } wish) yield return wish;
        var levels = emphasis.Select(quality => (Name: setup.Qualities.FirstOrDefault(other => other.Id == quality)?.Name ?? quality.Text, By: after.EmphasisOf(id, quality) - before.EmphasisOf(id, quality))).OrderBy(level => level.Name, StringComparer.Ordinal).ToList();
        if (levels.Where(level => level.By > 0).Select(level => level.Name).ToList() is { Count: > 0 } more) yield return Sentences.Say("changed.part.more", string.Join(", ", more));
        if (levels.Where(level => level.By < 0).Select(level => level.Name).ToList() is { Count: > 0 } less) yield return Sentences.Say("changed.part.less", string.Join(", ", less));

        string? Kind(Season season) => season.KindOf(id) is { } kind ? Sentences.Say($"kind.{kind}") : null;
        string? Load(Season season) => season.TargetOf(id) is { } load ? load.PercentOf(setup.ReferenceWeek).ToString() : null;
        string? Practised(Season season) => season.PracticesOf(id) is { } p ? string.Join(", ", new object?[] { p.Count, p.Minutes, p.Rpe }.OfType<object>()) : null;
    }

    private static string? Part(string sentence, string? was, string? now) => was == now ? null : Sentences.Say(sentence, now ?? Sentences.Say("changed.nothing"), was ?? Sentences.Say("changed.nothing"));

    private static string Thing<T>(Change change, Func<T, string> words) => (change.Before, change.After) switch
    {
        (null, T added) => Sentences.Say("changed.added", words(added)),
        (T removed, null) => Sentences.Say("changed.removed", words(removed)),
        (T was, T becomes) when words(was) != words(becomes) =>
            string.Join("; ", DetailWords.Of(was, becomes).Prepend(Sentences.Say("changed.became", words(was), words(becomes)))),
        (T was, T becomes) when string.Join("; ", DetailWords.Of(was, becomes)) is { Length: > 0 } details => Sentences.Say("changed.which", words(becomes), details),
        (_, T becomes) => Sentences.Say("changed.details", words(becomes)),
        _ => throw new InvalidOperationException($"A change of {change.Key} holds no {typeof(T).Name}."),
    };

    /// <summary>Runs of weeks whose word differs, in dates.</summary>
    private static IEnumerable<string> Runs(Season before, Season after, Func<SeasonWeek, bool> which, string sentence, Func<Season, SeasonWeek, string?> word)
    {
        var differing = after.Weeks.Where(which)
            .Select(week => (Week: week, Was: before.Week(week.Id) is { } old ? word(before, old) : null, Is: word(after, week)))
            .Where(week => week.Was != week.Is);
        foreach (var run in Joined(differing, (a, b) => a.Week.Number + 1 == b.Week.Number && a.Was == b.Was && a.Is == b.Is))
            yield return Sentences.Say(sentence, Day(run[0].Week.Days.First), Day(run[^1].Week.Days.Last), run[0].Was ?? Sentences.Say("changed.nothing"), run[0].Is ?? Sentences.Say("changed.nothing"));
    }

    private static IEnumerable<List<T>> Joined<T>(IEnumerable<T> items, Func<T, T, bool> follows)
    {
        List<T> run = [];
        foreach (var item in items)
        {
            if (run.Count > 0 && !follows(run[^1], item)) { yield return run; run = []; }
            run.Add(item);
        }
        if (run.Count > 0) yield return run;
    }

    private static string Day(DateOnly day) => MatchWords.Of(day);
}
