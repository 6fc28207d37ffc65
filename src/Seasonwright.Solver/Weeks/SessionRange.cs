using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>How long a proposed session of a kind is, how hard, what work it holds, and what it can carry beside its own quality. Common practice, no source.</summary>
/// <param name="Least">Minutes.</param>
/// <param name="Usual">Minutes.</param>
/// <param name="Most">Minutes, with all it carries.</param>
/// <param name="Rpe">Whole, so that loads are whole AU.</param>
/// <param name="Carries">Qualities it can be an exposure of besides.</param>
/// <param name="MostCarried">So many of them in one session.</param>
internal sealed record SessionRange(SessionKind Kind, int Least, int Usual, int Most, int Rpe, SessionWork Work, ImmutableArray<QualityKind> Carries, int MostCarried)
{
    private static readonly ImmutableArray<SessionRange> All =
    [
        Of(SessionKind.LowerStrength, 30, 70, new(10, 5, 10, 6, 6, 4), 2, QualityKind.Power, QualityKind.Hypertrophy, QualityKind.Prevention),
        Of(SessionKind.SmallDose, 20, 40, new(5, 5, 4, 4, 4, 3), 2, QualityKind.Power, QualityKind.Prevention),
        Of(SessionKind.UpperStrength, 25, 60, new(5, 4, 10, 6, 10, 5), 2, QualityKind.Hypertrophy, QualityKind.Prevention),
        Of(SessionKind.Hypertrophy, 40, 75, new(10, 3, 18, 12, 12, 10), 2, QualityKind.MaximumStrength, QualityKind.Prevention),
        Of(SessionKind.Power, 25, 50, new(10, 5, 7, 4, 5, 3), 1, QualityKind.Prevention),
        Of(SessionKind.Speed, 20, 50, new(10, 1, 30, 18, 30, 12), 2, QualityKind.ChangeOfDirection, QualityKind.Power),
        Of(SessionKind.Intervals, 20, 50, new(0, 1, 50, 30, 50, 20), 1, QualityKind.ChangeOfDirection),
        Of(SessionKind.Endurance, 30, 75, new(0, 1, 75, 75, 75, 45), 0),
        Of(SessionKind.Prevention, 15, 30, new(0, 3, 8, 8, 8, 6), 0),
        Of(SessionKind.Activation, 15, 25, new(0, 1, 25, 25, 25, 25), 1, QualityKind.Power),
        Of(SessionKind.Recovery, 20, 40, new(0, 1, 40, 40, 40, 40), 0),
    ];

    /// <summary>Kinds that are proposed; tests stand on test days.</summary>
    public static IEnumerable<SessionKind> Kinds => All.Select(range => range.Kind);

    public static SessionRange Of(SessionKind kind) => All[(int)kind - 1];

    /// <summary>The quality it is for, and what it carries.</summary>
    public static ImmutableArray<QualityKind> Own(SessionKind kind) => [.. SessionUse.Of(kind).Qualities];

    /// <summary>Minutes that a quality takes in a session that carries it.</summary>
    public static int MinutesToCarry(QualityKind quality) => quality switch { QualityKind.MaximumStrength => 15, QualityKind.Hypertrophy => 10, _ => 5 };

    /// <summary>Whether it can carry a quality in a week: muscle is not built beside two matches (heavy-week-in-congestion).</summary>
    public bool CanCarry(WeekProblem problem, QualityKind quality) => Carries.Contains(quality) && !(quality == QualityKind.Hypertrophy && problem.Matches > 1);

    /// <summary>Its effort on a day: upper-body work on the day after a match is light.</summary>
    public int RpeOn(WeekProblem problem, WeekDay day) => Kind == SessionKind.UpperStrength && day.SinceLast <= problem.Limits.HardAfter ? Math.Min(Rpe, problem.Limits.RpeAfter) : Rpe;

    private static SessionRange Of(SessionKind kind, int least, int most, SessionWork work, int carried, params ReadOnlySpan<QualityKind> carries) =>
        new(kind, least, SessionUse.Of(kind).Minutes.Value, most, (int)SessionUse.Of(kind).Rpe.Value, work, ImmutableArray.Create(carries), carried);
}
