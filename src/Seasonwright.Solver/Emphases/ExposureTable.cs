using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>How many exposures a week gives, at most and as wished, by quality in the order of <see cref="QualityKind"/>. Working defaults: common practice, no source.</summary>
internal static class ExposureTable
{
    public const int Qualities = (int)QualityKind.Prevention;

    private static readonly int[][] MostByPhase =
    [
        [3, 2, 1, 1, 1, 1, 3],
        [2, 3, 2, 2, 2, 3, 2],
        [1, 2, 3, 2, 2, 2, 1],
        [0, 2, 2, 2, 2, 2, 1],
        [0, 2, 2, 2, 2, 2, 1],
        [0, 1, 0, 0, 0, 0, 2],
    ];

    private static readonly int[][] WishByPhase =
    [
        [2, 1, 0, 1, 0, 1, 2],
        [1, 2, 1, 1, 1, 2, 1],
        [0, 2, 2, 1, 1, 1, 1],
        [0, 1, 1, 1, 1, 1, 0],
        [0, 1, 2, 1, 1, 1, 0],
        [0, 0, 0, 0, 0, 0, 0],
    ];

    private static readonly int[]
        Any = [3, 3, 3, 3, 3, 3, 3],
        Introductory = [2, 2, 2, 2, 2, 1, 2],
        Unloading = [1, 2, 2, 2, 2, 2, 2],
        Taper = [0, 1, 2, 2, 2, 2, 2],
        ReEntry = [1, 2, 2, 2, 2, 1, 2],
        TwoMatches = [0, 1, 1, 1, 1, 0, 0],
        MoreMatches = [0, 1, 0, 1, 0, 0, 0],
        Reduced = [0, 1, 1, 1, 0, 1, 1],
        None = [0, 0, 0, 0, 0, 0, 0];

    public static int Most(PhaseKind phase, int quality) => MostByPhase[(int)phase][quality];

    public static int Wish(PhaseKind phase, int quality) => WishByPhase[(int)phase][quality];

    /// <summary>The most that a week's kind and matches leave of its block's level.</summary>
    public static int[] Most(WeekKind kind, int matches) => (kind, matches) switch
    {
        (WeekKind.Break, _) => None,
        (WeekKind.Transition, _) => Any,
        (_, > 2) => MoreMatches,
        (_, 2) => TwoMatches,
        (WeekKind.Introductory, _) => Introductory,
        (WeekKind.Unloading, _) => Unloading,
        (WeekKind.Taper, _) => Taper,
        (WeekKind.ReEntry, _) => ReEntry,
        (WeekKind.Reduced, _) => Reduced,
        _ => Any,
    };

    /// <summary>Exposures of a week together.</summary>
    public static int Sum(WeekKind kind, int matches) => (kind, matches) switch
    {
        (WeekKind.Break, _) => 0,
        (WeekKind.Transition, _) => 3,
        (_, > 2) => 2,
        (_, 2) => 4,
        (WeekKind.Building or WeekKind.Overload, _) => 10,
        (WeekKind.Introductory or WeekKind.Unloading or WeekKind.Taper, _) => 8,
        (WeekKind.ReEntry, _) => 7,
        (WeekKind.Reduced, _) => 5,
        _ => 7,
    };
}
