using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>Where a plan stands after a week: all that later weeks depend on.</summary>
/// <param name="WeeksIn">Training weeks of the phase so far; 0 in competition.</param>
/// <param name="Level">The level of load reached, in steps of three points.</param>
internal readonly record struct Stand(PhaseKind Phase, int WeeksIn, Mode Mode, int Level)
{
    /// <summary>Points of one step of the level.</summary>
    public const int Step = 3;

    public const int MostLevel = 45;

    private const int MostWeeksIn = 60, Phases = 6;

    public const int Keys = Phases * (MostWeeksIn + 1) * Modes.Count * (MostLevel + 1);

    /// <summary>Before the season's first week.</summary>
    public static Stand Before(Problem problem) => new(PhaseKind.Competition, 0, Mode.Start, LevelOf(problem.Start.PointsBefore()));

    /// <summary>Points of the level reached.</summary>
    public int Reached => Step * Level;

    public int Key => (((int)Phase * (MostWeeksIn + 1) + WeeksIn) * Modes.Count + (int)Mode) * (MostLevel + 1) + Level;

    /// <summary>The step nearest to a load, the lower of two.</summary>
    public static int LevelOf(int points) => Math.Clamp((2 * points + Step - 1) / (2 * Step), 0, MostLevel);
}
