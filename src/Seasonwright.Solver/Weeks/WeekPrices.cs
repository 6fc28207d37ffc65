using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>What falls short of a week's wishes costs so much, in thousandths. A point is one per cent of the normal hard week.</summary>
internal static class WeekPrices
{
    /// <summary>A point off what is aimed at for ours.</summary>
    public const int PointOffTarget = 20_000;

    /// <summary>A point by which a day's training differs from the usual shape of the week.</summary>
    public const int PointOffShape = 1_000;

    public const int MissingExposure = 40_000;

    /// <summary>In a first week back general work comes first, and what is fast can wait.</summary>
    private const int MissingGeneral = 60_000, MissingFast = 20_000;

    /// <summary>An exposure that is asked for and missing.</summary>
    public static int Missing(WeekProblem problem, QualityKind quality) => !problem.IsBack ? MissingExposure
        : quality is QualityKind.AerobicConditioning or QualityKind.Prevention ? MissingGeneral
        : quality is QualityKind.Speed or QualityKind.ChangeOfDirection or QualityKind.HighIntensityConditioning or QualityKind.Power ? MissingFast
        : MissingExposure;

    public const int SuperfluousExposure = 3_000;

    public const int Session = 2_000;

    /// <summary>A session that serves no exposure that is asked for.</summary>
    public const int Idle = 12_000;

    /// <summary>A session of strength that the legs lack.</summary>
    public const int NoLegs = 20_000;

    /// <summary>Strength is developed, and the legs have no full session of it.</summary>
    public const int SmallDoseOnly = 10_000;

    /// <summary>A quality that the head coach's practice is asked to hold.</summary>
    public const int AskOfPractice = 6_000;

    /// <summary>No second light day: monotony may pass 2.</summary>
    public const int Monotonous = 60_000;

    /// <summary>No second day off: monotony may pass 1.5.</summary>
    public const int OneDayOff = 10_000;

    /// <summary>Heavy legs or sprints on the second day after a match.</summary>
    public const int HeavyAfter = 12_000;

    /// <summary>Work on the day after a match: dearer than an exposure, for light work is none.</summary>
    public const int DayAfter = 45_000;

    /// <summary>Two hard days one after the other.</summary>
    public const int HardPair = 6_000;

    /// <summary>A minute from the usual length of its kind.</summary>
    public const int OffUsualMinute = 20;

    /// <summary>Work on a Saturday or Sunday without a match, on a day that would else be free.</summary>
    public const int Weekend = 4_000;

    /// <summary>Speed is asked for, and none of it is ours: dearer than a short dose beyond the target.</summary>
    public const int NoSprints = 70_000;

    /// <summary>A session that stands on its day and does not stay: more than a point of the target, less than an exposure.</summary>
    public const int Standing = 30_000;

    /// <summary>A minute by which a session that stays changes.</summary>
    public const int StandingMinute = 10;

    /// <summary>A quality carried, or asked of practice, otherwise than it stands.</summary>
    public const int StandingQuality = 10;

    /// <summary>Thousandths for one AU where a point costs so much.</summary>
    public static long AnAu(int aPoint, int hundred) => (100L * aPoint + hundred / 2) / hundred;
}
