using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>How long the phases of one preparation may be, in training weeks (breaks do not count).</summary>
/// <remarks>Common practice, no source; a general phase of two weeks or more serves general-before-specific.</remarks>
public sealed record PhaseLengths(PhaseLengths.Span Transition, PhaseLengths.Span General, PhaseLengths.Span Specific, PhaseLengths.Span PreCompetition)
{
    /// <summary>A gap between two competition periods of so many weeks begins with a transition.</summary>
    private const int LongGap = 12;

    private static readonly (int Weeks, Span General, Span Specific, Span PreCompetition)[] Table =
    [
        (30, new(6, 20), new(4, 12), new(2, 6)),
        (9, new(3, 14), new(3, 9), new(2, 4)),
        (7, new(2, 6), new(3, 6), new(1, 4)),
        (6, new(2, 6), new(2, 6), new(1, 4)),
        (5, new(2, 6), new(1, 4), new(1, 4)),
        (4, new(2, 6), new(0, 4), new(1, 4)),
        (3, new(2, 6), new(0, 4), new(0, 3)),
        // Two weeks are not parted: what comes before the general is too early.
        (0, new(0, 4), new(0, 0), new(0, 0)),
    ];

    /// <param name="weeks">Weeks before the first official match, breaks included.</param>
    /// <param name="training">Training weeks among them.</param>
    public static PhaseLengths Of(bool isFirst, int weeks, int training)
    {
        if (isFirst) return Preparation(new(0, 0), training);
        if (weeks >= LongGap) return Preparation(new(2, 3), Math.Max(0, training - 2));
        return new(new(0, 0), new(0, 0), new(0, training > 0 ? 9 : 0), new(training > 0 ? 1 : 0, 4));
    }

    public Span Of(PhaseKind phase) => phase switch
    {
        PhaseKind.Transition => Transition,
        PhaseKind.GeneralPreparation => General,
        PhaseKind.SpecificPreparation => Specific,
        _ => PreCompetition,
    };

    /// <summary>What the longest phases together do not hold goes to the general one.</summary>
    private static PhaseLengths Preparation(Span transition, int weeks)
    {
        var (_, general, specific, pre) = Array.Find(Table, row => weeks >= row.Weeks);
        var left = weeks - general.Most - specific.Most - pre.Most;
        return new(transition, left > 0 ? general with { Most = general.Most + left } : general, specific, pre);
    }

    /// <summary>From the least to the most, both inside.</summary>
    public readonly record struct Span(int Least, int Most);
}
