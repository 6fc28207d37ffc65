using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A session as the week stage reads and places it.</summary>
/// <param name="Day">Index of its day; below 0 or beyond the last for the days beside the week.</param>
/// <param name="Qualities">Of which it is an exposure, its own first.</param>
/// <param name="Id">Null for one that is not in the season.</param>
public sealed record WeekSession(int Day, DaySlot Slot, SessionKind Kind, int Minutes, decimal Rpe, ValueList<QualityKind> Qualities, SessionId? Id = null)
{
    private const decimal HardRpe = 7;

    private const int HardMinutes = 20;

    public bool IsOurs => Kind != SessionKind.Practice;

    public int Au => Load.Of(new Minutes(Minutes), new Rpe(Rpe)).Au;

    /// <summary>Heavy for the legs, by kind or by its doses.</summary>
    public bool IsHeavy { get; init; } = SessionUse.Of(Kind).IsHeavyLower;

    /// <summary>The rulebook's hard session.</summary>
    public bool IsHard => Rpe >= HardRpe && Minutes >= HardMinutes;

    /// <summary>A session of strength in the gym.</summary>
    public bool IsStrength => Kind is SessionKind.LowerStrength or SessionKind.SmallDose or SessionKind.UpperStrength or SessionKind.Hypertrophy;

    /// <summary>A visit to the gym.</summary>
    public bool IsGym => SessionUse.Of(Kind).IsGym;

    /// <summary>Jumps that count: those of an activation are few.</summary>
    public bool IsJumps => Kind is not (SessionKind.Practice or SessionKind.Activation or SessionKind.Test) && Qualities.Contains(QualityKind.Power);

    public bool IsEndurance => Kind is SessionKind.Intervals or SessionKind.Endurance;

    /// <summary>Of a practice that nobody entered: its day is our guess.</summary>
    public bool IsAssumed { get; init; }

    internal static WeekSession Of(Session session, Setup setup, DateOnly first) =>
        new(session.Day.DayNumber - first.DayNumber, session.Slot, session.Kind, session.Minutes.Value, session.Rpe.Value, [.. SessionUse.Exposures(session, setup)], session.Id) { IsHeavy = SessionUse.IsHeavy(session, setup) };
}
