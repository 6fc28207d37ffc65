using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Solver;

namespace Seasonwright.Desk.Proposing;

/// <summary>Why something of a repaired plan is otherwise than it was published.</summary>
public enum ChangeCause
{
    /// <summary>The calendar: a match moved, a week lost.</summary>
    Happened,

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
        var repaired = Step.Between(now.Facts, then.Facts).Changes.Select(change => change.Key.Subject.Split(':')[0]).ToHashSet(StringComparer.Ordinal);
        return [.. Enum.GetValues<ChangeCause>().Select(cause => (cause, Lines(cause))).Where(group => group.Item2.Count > 0)];

        IReadOnlyList<string> Lines(ChangeCause cause) => cause switch
        {
            ChangeCause.Happened => WhatChanged.Calendar(stands, now),
            ChangeCause.Shape => WhatChanged.Shape(stands, then),
            // Test days that the repair adds.
            ChangeCause.Better => [.. WhatChanged.Calendar(now, then), .. WhatChanged.Weeks(stands, then, setup, week => CauseOf(week) == cause)],
            _ => WhatChanged.Weeks(stands, then, setup, week => CauseOf(week) == cause),
        };

        ChangeCause CauseOf(SeasonWeek week) => !repaired.Contains(week.Id.Text) ? ChangeCause.ByHand : unavoidable.Contains(week.Number - 1) ? ChangeCause.Unavoidable : ChangeCause.Better;
    }
}
