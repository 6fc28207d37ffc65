using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>What differs between two states of a season, in dates and names a head coach can read.</summary>
public static class WhatChanged
{
    /// <summary>One line per match, event, test day or note; weeks of one kind of change are joined into runs. Empty when nothing differs.</summary>
    public static IReadOnlyList<string> Between(Season before, Season after)
    {
        var lines = new List<string>();
        var keys = Step.Between(before.Facts, after.Facts).Changes;
        if (before.Days is { } old && after.Days is { } now && old != now)
            lines.Add(Sentences.Say("changed.frame", Day(old.First), Day(old.Last), Day(now.First), Day(now.Last)));

        foreach (var change in keys)
        {
            switch (change.Before ?? change.After)
            {
                case Match: lines.Add(Thing(change, (Match match) => match.IsOff ? Sentences.Say("changed.match-off", MatchWords.Of(match), Sentences.Say($"status.{match.Status}")) : MatchWords.Of(match))); break;
                case Event: lines.Add(Thing(change, (Event item) => Sentences.Say("changed.event", item.Title, Day(item.Days.First), Day(item.Days.Last)))); break;
                case TestDay: lines.Add(Thing(change, (TestDay test) => Sentences.Say("changed.test", test.Battery, Day(test.Day)))); break;
                case Note: lines.Add(Thing(change, (Note note) => Sentences.Say("changed.note", note.Text, Day(note.Days.First)))); break;
                case Goal: lines.Add(Thing(change, (Goal goal) => goal.Measure)); break;
            }
        }

        lines.AddRange(Weeks(before, after, "changed.phase", (season, week) => season.PhaseOf(week) is { } run ? RunWords.Of(run.Phase) : null));
        lines.AddRange(Weeks(before, after, "changed.block", (season, week) => season.BlockOf(week) is { } run ? RunWords.Of(run.Block) : null));
        lines.AddRange(Weeks(before, after, "changed.kind", (season, week) => season.KindOf(week.Id) is { } kind ? Sentences.Say($"kind.{kind}") : null));
        lines.AddRange(Weeks(before, after, "changed.practices", (season, week) => season.PracticesOf(week.Id) is { } p ? string.Join(", ", new object?[] { p.Count, p.Minutes, p.Rpe }.OfType<object>()) : null));
        lines.AddRange(Weeks(before, after, "changed.wish", (season, week) => season.PracticeWishOf(week.Id)));
        lines.AddRange(Marks(keys, after, SeasonFacets.WeekLoad.Name, "changed.load", key => WeekId.Parse(key)));
        lines.AddRange(Marks(keys, after, SeasonFacets.WeekEmphasis.Name, "changed.emphasis", key => Pair<WeekId, QualityId>.Parse(key).First));
        return lines;
    }

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
    private static IEnumerable<string> Weeks(Season before, Season after, string sentence, Func<Season, SeasonWeek, string?> word)
    {
        var differing = after.Weeks
            .Select(week => (Week: week, Was: before.Week(week.Id) is { } old ? word(before, old) : null, Is: word(after, week)))
            .Where(week => week.Was != week.Is);
        foreach (var run in Joined(differing, (a, b) => a.Week.Number + 1 == b.Week.Number && a.Was == b.Was && a.Is == b.Is))
            yield return Sentences.Say(sentence, Day(run[0].Week.Days.First), Day(run[^1].Week.Days.Last), run[0].Was ?? Sentences.Say("changed.nothing"), run[0].Is ?? Sentences.Say("changed.nothing"));
    }

    /// <summary>Runs of weeks in which something of a family changed, in dates, without the figures (AU is not the head coach's language).</summary>
    private static IEnumerable<string> Marks(IEnumerable<Change> changes, Season after, string facet, string sentence, Func<string, WeekId> weekOf)
    {
        var weeks = changes.Where(change => change.Key.Facet == facet).Select(change => after.Week(weekOf(change.Key.Subject)))
            .OfType<SeasonWeek>().Distinct().OrderBy(week => week.Number);
        foreach (var run in Joined(weeks, (a, b) => a.Number + 1 == b.Number))
            yield return Sentences.Say(sentence, Day(run[0].Days.First), Day(run[^1].Days.Last));
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
