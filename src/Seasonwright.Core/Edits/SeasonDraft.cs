using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>A draft of a season: finds the weeks an edit names and paints runs over them.</summary>
internal sealed class SeasonDraft(Season before) : Draft(before.Facts)
{
    public const int LongestName = 120;
    public const int LongestText = 2000;

    /// <summary>The season as it stood when the edit came.</summary>
    public Season Before => before;

    /// <summary>The weeks from first to last, both inside; empty after a refusal.</summary>
    public IReadOnlyList<SeasonWeek> Weeks(WeekId first, WeekId last)
    {
        var from = before.Week(first);
        var to = before.Week(last);
        if (from is null) Refuse("week-unknown", $"week/{first}", first);
        if (to is null && last != first) Refuse("week-unknown", $"week/{last}", last);
        if (from is null || to is null) return [];
        if (to.Number < from.Number)
        {
            Refuse("weeks-backward", $"week/{first}", from.Number, to.Number);
            return [];
        }
        return before.Weeks[(from.Number - 1)..to.Number];
    }

    /// <summary>The weeks from first to last, refused where one of them is locked.</summary>
    public IReadOnlyList<SeasonWeek> OpenWeeks(WeekId first, WeekId last)
    {
        var weeks = Weeks(first, last);
        var locked = weeks.Where(week => FindValue(SeasonFacets.WeekLock, week.Id) == true).ToList();
        foreach (var week in locked) Refuse("week-locked", $"week/{week.Id}", week.Number);
        return locked.Count == 0 ? weeks : [];
    }

    /// <summary>
    /// Marks weeks with a run's id, or clears them when there is none. Runs stay unbroken over all weeks, those outside the season
    /// included: an old run is extended only where the weeks adjoin it, and one that is cut in two keeps its left part while the
    /// right part becomes <paramref name="rest"/>. A run that loses its last week goes.
    /// </summary>
    public void Paint<TId, TRun>(Facet<WeekId, TId> mark, Facet<TId, TRun> runs, IReadOnlyList<SeasonWeek> weeks, (TId Id, TRun Run)? paint, TId rest)
        where TId : struct, ISubject<TId>
        where TRun : class
    {
        if (weeks.Count == 0) return;
        var known = before.Frame.Known.ToList();
        var marks = known.Select(week => Facts.FindValue(mark, week)).ToList();
        var from = before.Frame.Before.Count + weeks[0].Number - 1;
        var to = from + weeks.Count;
        var covered = weeks.Select(week => FindValue(mark, week.Id)).OfType<TId>().Distinct().ToList();
        foreach (var week in weeks)
        {
            if (paint is { } with) Set(mark, week.Id, with.Id);
            else Remove(mark, week.Id);
        }

        if (paint is var (id, run))
        {
            var own = Enumerable.Range(0, known.Count).Where(at => id.Equals(marks[at])).ToList();
            if (own.Count > 0 && (own[^1] < from - 1 || own[0] > to)) Refuse("run-apart", runs.Of(id).ToString(), id);
            // Recasting a run changes the weeks it has already.
            if (Find(runs, id) is { } old && !old.Equals(run))
                foreach (var at in own.Where(at => Facts.FindValue(SeasonFacets.WeekLock, known[at]) == true))
                    Refuse("week-locked", $"week/{known[at]}", at - before.Frame.Before.Count + 1);
            Set(runs, id, run);
        }

        foreach (var cut in covered.Where(cut => !cut.Equals(paint?.Id)))
        {
            var goesOnBefore = marks.Take(from).Any(other => cut.Equals(other));
            var after = known.Skip(to).Where((_, at) => cut.Equals(marks[to + at])).ToList();
            if (!goesOnBefore && after.Count == 0) Remove(runs, cut);
            if (!goesOnBefore || after.Count == 0 || Facts.Find(runs, cut) is not { } whole) continue;
            if (Find(runs, rest) is not null || marks.Contains(rest)) Refuse("rest-taken", runs.Of(rest).ToString(), rest);
            Set(runs, rest, whole);
            foreach (var week in after) Set(mark, week, rest);
        }
    }

    /// <summary>Says where the season lies.</summary>
    public void SetFrame(Frame frame)
    {
        CheckFrame(this, frame);
        Set(SeasonFacets.Frame, default, frame);
    }

    public static void CheckFrame(Draft draft, Frame frame)
    {
        if (frame.Weeks.Count is < 1 or > Frame.MostWeeks) draft.Refuse("weeks-count", "weeks", frame.Weeks.Count, Frame.MostWeeks);
        if (frame.Known.Count() is var kept and > Frame.MostKept) draft.Refuse("weeks-kept", "weeks", kept, Frame.MostKept);
        if (frame.Known.Distinct().Count() != frame.Known.Count()) draft.Refuse("weeks-twice", "weeks");
        draft.RequirePossible(frame.FirstDay, "firstDay");
    }
}
