using System.Collections.Immutable;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What a kind of session is to plan and rulebook. Its name is the sentence "session.KIND". Common practice, no source.</summary>
/// <param name="Minutes">Usual length; practices have the usual week's.</param>
/// <param name="Rpe">Usual effort; practices have the usual week's.</param>
/// <param name="IsGym">It needs the gym; else the field or hall, or anywhere.</param>
/// <param name="IsHeavyLower">The rulebook's heavy_lower: three and more heavy or hard sets of the legs.</param>
/// <param name="IsSmallDose">Two sets a pattern at most at 80 % and above: heavy, and no heavy_lower.</param>
/// <param name="Qualities">Of which it is an exposure where it says no doses of its own.</param>
public sealed record SessionUse(SessionKind Kind, Minutes Minutes, Rpe Rpe, bool IsGym, bool IsHeavyLower, bool IsSmallDose, ValueList<QualityKind> Qualities)
{
    /// <summary>The rulebook's hard session: this effort, for so many minutes.</summary>
    private const decimal HardRpe = 7m;

    private const int HardMinutes = 20, HeavySets = 3, HeavyTop = 80, SmallSets = 4;

    private static readonly ImmutableArray<SessionUse> All =
    [
        Of(SessionKind.Practice, 90, 5.5m, isGym: false),
        Of(SessionKind.LowerStrength, 55, 7m, isGym: true, QualityKind.MaximumStrength) with { IsHeavyLower = true },
        Of(SessionKind.SmallDose, 30, 6m, isGym: true, QualityKind.MaximumStrength) with { IsSmallDose = true },
        Of(SessionKind.UpperStrength, 45, 6m, isGym: true, QualityKind.MaximumStrength),
        Of(SessionKind.Hypertrophy, 60, 6m, isGym: true, QualityKind.Hypertrophy) with { IsHeavyLower = true },
        Of(SessionKind.Power, 40, 5m, isGym: true, QualityKind.Power),
        Of(SessionKind.Speed, 35, 5m, isGym: false, QualityKind.Speed),
        Of(SessionKind.Intervals, 40, 8m, isGym: false, QualityKind.HighIntensityConditioning),
        Of(SessionKind.Endurance, 45, 4m, isGym: false, QualityKind.AerobicConditioning),
        Of(SessionKind.Prevention, 20, 3m, isGym: false, QualityKind.Prevention),
        Of(SessionKind.Activation, 20, 3m, isGym: false),
        Of(SessionKind.Recovery, 30, 2m, isGym: false),
        Of(SessionKind.Test, 60, 5m, isGym: false),
    ];

    public Load Load => Load.Of(Minutes, Rpe);

    public static SessionUse Of(SessionKind kind) => All[(int)kind];

    /// <summary>As the team does it: practices as in its usual week.</summary>
    public static SessionUse Of(SessionKind kind, Setup setup) => kind == SessionKind.Practice && setup.UsualWeek.Practices is { Minutes: { Value: >= Session.LeastMinutes and <= Session.MostMinutes } minutes, Rpe: var rpe }
        ? Of(kind) with { Minutes = minutes, Rpe = rpe } : Of(kind);

    /// <summary>Of which kinds of quality a session is an exposure, once each: those of its doses, or of its kind where it says none. A cancelled one of none.</summary>
    public static ImmutableArray<QualityKind> Exposures(Session session, Setup setup) => session.IsCancelled ? []
        : session.Doses is { Count: > 0 } doses ? [.. doses.Select(dose => setup.Qualities.FirstOrDefault(quality => quality.Id == dose.Quality)?.Kind).OfType<QualityKind>().Distinct()]
        : [.. Of(session.Kind).Qualities];

    /// <summary>Whether a session is heavy for the legs: by its kind, or by what it gives maximum strength elsewhere than in the upper body. A small dose has two sets of two patterns.</summary>
    public static bool IsHeavy(Session session, Setup setup) => !session.IsCancelled && (Of(session.Kind).IsHeavyLower
        || session.Kind is not (SessionKind.UpperStrength or SessionKind.Test) && session.Doses?.Any(dose => dose is { Sets: >= HeavySets, Top.Value: >= HeavyTop } && (dose.Sets > SmallSets || !Of(session.Kind).IsSmallDose)
            && setup.Qualities.Any(quality => quality.Id == dose.Quality && quality.Kind == QualityKind.MaximumStrength)) == true);

    /// <summary>Whether a session is hard as the rulebook means it: RPE 7 and more for 20 minutes and more.</summary>
    public static bool IsHard(Session session) => !session.IsCancelled && session.Rpe.Value >= HardRpe && session.Minutes.Value >= HardMinutes;

    private static SessionUse Of(SessionKind kind, int minutes, decimal rpe, bool isGym, params ReadOnlySpan<QualityKind> qualities) =>
        new(kind, new Minutes(minutes), new Rpe(rpe), isGym, false, false, ValueList.Create(qualities));
}
