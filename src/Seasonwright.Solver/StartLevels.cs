using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What the start levels stand for.</summary>
public static class StartLevels
{
    /// <summary>Points a week over the four weeks before the season: 15, 35 or 55. Common practice, no source.</summary>
    public static int PointsBefore(this StartLevel start) => start switch { StartLevel.Off => 15, StartLevel.Home => 35, _ => 55 };
}
