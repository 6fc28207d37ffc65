using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>How long a proposed session of a kind is, how hard, and what it can carry beside its own quality. Common practice, no source.</summary>
/// <param name="Least">Minutes.</param>
/// <param name="Usual">Minutes.</param>
/// <param name="Most">Minutes.</param>
/// <param name="Rpe">Whole, so that loads are whole AU.</param>
/// <param name="Carries">Qualities it can be an exposure of besides, each for five minutes more at least.</param>
/// <param name="MostCarried">So many of them in one session.</param>
internal sealed record SessionRange(SessionKind Kind, int Least, int Usual, int Most, int Rpe, ImmutableArray<QualityKind> Carries, int MostCarried)
{
    /// <summary>Minutes that each quality carried takes at least.</summary>
    public const int MinutesToCarry = 5;

    private static readonly ImmutableArray<SessionRange> All =
    [
        Of(SessionKind.LowerStrength, 35, 70, 2, QualityKind.Power, QualityKind.Hypertrophy, QualityKind.Prevention),
        Of(SessionKind.SmallDose, 20, 40, 2, QualityKind.Power, QualityKind.Prevention),
        Of(SessionKind.UpperStrength, 30, 60, 2, QualityKind.Hypertrophy, QualityKind.Prevention),
        Of(SessionKind.Hypertrophy, 45, 75, 2, QualityKind.MaximumStrength, QualityKind.Prevention),
        Of(SessionKind.Power, 25, 55, 1, QualityKind.Prevention),
        Of(SessionKind.Speed, 20, 50, 2, QualityKind.ChangeOfDirection, QualityKind.Power),
        Of(SessionKind.Intervals, 20, 50, 1, QualityKind.ChangeOfDirection),
        Of(SessionKind.Endurance, 30, 75, 0),
        Of(SessionKind.Prevention, 15, 30, 0),
        Of(SessionKind.Activation, 15, 25, 1, QualityKind.Power),
        Of(SessionKind.Recovery, 20, 40, 0),
    ];

    /// <summary>Kinds that are proposed; tests stand on test days.</summary>
    public static IEnumerable<SessionKind> Kinds => All.Select(range => range.Kind);

    public static SessionRange Of(SessionKind kind) => All[(int)kind - 1];

    /// <summary>The quality it is for, and what it carries.</summary>
    public static ImmutableArray<QualityKind> Own(SessionKind kind) => [.. SessionUse.Of(kind).Qualities];

    /// <summary>Its effort on a day: upper-body work on the day after a match is light.</summary>
    public int RpeOn(WeekProblem problem, WeekDay day) => Kind == SessionKind.UpperStrength && day.SinceLast <= problem.Limits.HardAfter ? Math.Min(Rpe, problem.Limits.RpeAfter) : Rpe;

    private static SessionRange Of(SessionKind kind, int least, int most, int carried, params ReadOnlySpan<QualityKind> carries) =>
        new(kind, least, SessionUse.Of(kind).Minutes.Value, most, (int)SessionUse.Of(kind).Rpe.Value, ImmutableArray.Create(carries), carried);
}
