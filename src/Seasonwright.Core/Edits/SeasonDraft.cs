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
    /// Marks weeks with a run's id, or clears them when there is none. A run that is cut in two keeps its left part; the right
    /// part becomes <paramref name="rest"/>. A run that loses its last week goes.
    /// </summary>
    public void Paint<TId, TRun>(Facet<WeekId, TId> mark, Facet<TId, TRun> runs, IReadOnlyList<SeasonWeek> weeks, (TId Id, TRun Run)? paint, TId rest)
        where TId : struct, ISubject<TId>
        where TRun : class
    {
        if (weeks.Count == 0) return;
        var covered = weeks.Select(week => FindValue(mark, week.Id)).OfType<TId>().Distinct().ToList();
        foreach (var week in weeks)
        {
            if (paint is { } with) Set(mark, week.Id, with.Id);
            else Remove(mark, week.Id);
        }
        if (paint is { } painted) Set(runs, painted.Id, painted.Run);

        foreach (var id in covered.Where(id => paint is not { } with || !id.Equals(with.Id)))
        {
            var left = Facts.All(mark).Where(fact => fact.Value.Equals(id)).Select(fact => fact.Subject).ToHashSet();
            if (left.Count == 0)
            {
                Remove(runs, id);
                continue;
            }
            var goesOnBefore = Before.Weeks[..(weeks[0].Number - 1)].Any(week => left.Contains(week.Id));
            var after = Before.Weeks[weeks[^1].Number..].Where(week => left.Contains(week.Id)).ToList();
            if (!goesOnBefore || after.Count == 0 || Facts.Find(runs, id) is not { } run) continue;
            if (Find(runs, rest) is not null || (paint is { } p && p.Id.Equals(rest)))
            {
                Refuse("rest-taken", runs.Of(rest).ToString(), rest);
                return;
            }
            Set(runs, rest, run);
            foreach (var week in after) Set(mark, week.Id, rest);
        }
    }
}
