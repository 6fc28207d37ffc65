using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>Why something of a repaired plan is otherwise than it was published.</summary>
public enum ChangeCause
{
    /// <summary>The calendar: a match moved, a week lost.</summary>
    Happened,

    /// <summary>Changed by hand since, and otherwise again by the repair.</summary>
    Undone,

    /// <summary>A week that would not stay even where leaving it is as dear as it gets.</summary>
    Unavoidable,

    /// <summary>A week that could stay at some cost.</summary>
    Better,

    /// <summary>Phases and blocks.</summary>
    Shape,

    /// <summary>Changed by hand since, and left so.</summary>
    ByHand,
}

/// <summary>What a repair changes, in a list a head coach can read, with why it does.</summary>
public static class RepairChanges
{
    /// <summary>The lines of each cause, in the order of the causes; causes without any are left out.</summary>
    /// <param name="stands">What the plan was: as published.</param>
    /// <param name="now">The season with what has happened.</param>
    /// <param name="then">The same with the repair in it.</param>
    /// <param name="unavoidable">Of the repair: <see cref="Proposals.Unavoidable"/>.</param>
    public static IReadOnlyList<(ChangeCause Cause, IReadOnlyList<string> Lines)> Of(Season stands, Season now, Season then, Setup setup, IReadOnlyCollection<int> unavoidable)
    {
        var (byHand, repaired) = (Seen(stands, now), Seen(now, then));
        var undone = repaired.Where(change => byHand.Any(other => other.Key == change.Key)).ToList();
        var (again, anew) = (With(now, undone), With(now, repaired.Except(undone)));
        var unset = With(now, byHand.Where(change => repaired.All(other => other.Key != change.Key)).Select(change => change.Inverse));
        return [.. Enum.GetValues<ChangeCause>().Select(cause => (cause, Lines(cause))).Where(group => group.Item2.Count > 0)];

        IReadOnlyList<string> Lines(ChangeCause cause) => cause switch
        {
            ChangeCause.Happened => WhatChanged.Calendar(stands, now),
            ChangeCause.Undone => [.. WhatChanged.Shape(now, then, IsShapedByHand), .. WhatChanged.Weeks(now, again, setup, _ => true, isUndone: true)],
            ChangeCause.Unavoidable => WhatChanged.Weeks(now, anew, setup, IsUnavoidable),
            // Test days that the repair adds.
            ChangeCause.Better => [.. WhatChanged.Calendar(now, then), .. WhatChanged.Weeks(now, anew, setup, week => !IsUnavoidable(week))],
            ChangeCause.Shape => WhatChanged.Shape(now, then, week => !IsShapedByHand(week)),
            ChangeCause.ByHand => [.. WhatChanged.Shape(stands, now, week => Shape(now, week) == Shape(then, week)), .. WhatChanged.Weeks(unset, now, setup, _ => true)],
            _ => throw new ArgumentOutOfRangeException(nameof(cause)),
        };

        bool IsUnavoidable(SeasonWeek week) => unavoidable.Contains(week.Number - 1);

        bool IsShapedByHand(SeasonWeek week) => Shape(stands, week) != Shape(now, week);

        // Of the weeks alone; a load that is the same in whole per cent is no change to a reader.
        List<Change> Seen(Season before, Season after) => [.. Step.Between(before.Facts, after.Facts).Changes.Where(change => change.Key.Facet.StartsWith("week.", StringComparison.Ordinal)
            && ((change.Before, change.After) is not (Load was, Load becomes) || was.PercentOf(setup.ReferenceWeek) != becomes.PercentOf(setup.ReferenceWeek)))];
    }

    private static Season With(Season season, IEnumerable<Change> changes) => season.With(new Step(changes.ToValueList()));

    private static (Phase?, Block?) Shape(Season season, SeasonWeek week) => season.Week(week.Id) is { } known ? (season.PhaseOf(known)?.Phase, season.BlockOf(known)?.Block) : default;
}
