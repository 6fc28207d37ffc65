using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>What a session asks for, as rules mean it: by its doses where it says any, else by its kind. What nobody said is not known, and never none.</summary>
internal static class SessionContent
{
    /// <summary>A session this long may be hard. From the rulebook's table of terms; common practice, no source.</summary>
    public const int HardMinutes = 20;

    /// <summary>From this share of the most that can be lifted once on a set is heavy. From the rulebook's table of terms.</summary>
    private const int HeavyTop = 80;

    /// <summary>Maximal sprints. A quality of speed that is only touched is none.</summary>
    public static bool IsSprint(Session session, Setup setup) => session.Kind is not (SessionKind.Activation or SessionKind.Test)
        && (session.Doses is { Count: > 0 } doses ? doses.Any(dose => (dose.Metres ?? dose.Sets) is not null && KindOf(dose, setup) == QualityKind.Speed) : session.Kind == SessionKind.Speed);

    /// <summary>Jumps: contacts that are counted, or power work of which nobody said what it is.</summary>
    public static bool IsJumps(Session session) => session.Kind != SessionKind.Activation
        && (session.Doses is { Count: > 0 } doses ? doses.Any(dose => dose.Contacts is not null) : session.Kind == SessionKind.Power);

    /// <summary>High-intensity conditioning.</summary>
    public static bool IsIntervals(Session session, Setup setup) => Gives(session, setup, QualityKind.HighIntensityConditioning);

    public static bool IsHypertrophy(Session session, Setup setup) => Gives(session, setup, QualityKind.Hypertrophy);

    public static bool IsStrength(Session session) => session.Kind is SessionKind.LowerStrength or SessionKind.SmallDose or SessionKind.UpperStrength or SessionKind.Hypertrophy or SessionKind.Power;

    public static bool IsEndurance(Session session) => session.Kind is SessionKind.Intervals or SessionKind.Endurance;

    public static bool IsTiringTest(Session session) => session.Kind == SessionKind.Test && !TestWords.TireNobody(session.Name ?? "");

    /// <summary>As <see cref="SessionUse.Exposures"/>, of one kind.</summary>
    public static bool Gives(Session session, Setup setup, QualityKind kind)
    {
        if (session.IsCancelled) return false;
        if (session.Doses is not { Count: > 0 } doses) return SessionUse.Of(session.Kind).Qualities.Contains(kind);
        foreach (var dose in doses)
            if (KindOf(dose, setup) == kind) return true;
        return false;
    }

    /// <summary>Hard sets for some kinds of quality; null where nobody said how many.</summary>
    public static int? Sets(Session session, Setup setup, params ReadOnlySpan<QualityKind> kinds)
    {
        var sum = 0;
        if (session.Doses is not { Count: > 0 } doses) return null;
        foreach (var dose in doses)
        {
            if (KindOf(dose, setup) is not { } kind || !kinds.Contains(kind)) continue;
            if (dose.Sets is not { } sets) return null;
            sum += sets;
        }
        return sum;
    }

    /// <summary>Sets of doses that are known to be heavy.</summary>
    public static int HeavySets(Session session) => session.Doses?.Where(dose => dose.Top?.Value >= HeavyTop).Sum(dose => dose.Sets ?? 0) ?? 0;

    public static QualityKind? KindOf(Dose dose, Setup setup)
    {
        foreach (var quality in setup.Qualities)
            if (quality.Id == dose.Quality) return quality.Kind;
        return null;
    }
}
