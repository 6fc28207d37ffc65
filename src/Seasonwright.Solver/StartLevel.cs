namespace Seasonwright.Solver;

/// <summary>How the squad comes into the season: what it did in the four weeks before.</summary>
public enum StartLevel
{
    /// <summary>Next to nothing: 15 points a week.</summary>
    Off,

    /// <summary>A home programme: 35 points a week.</summary>
    Home,

    /// <summary>Training was kept up: 55 points a week.</summary>
    Kept,
}

/// <summary>What the start levels stand for.</summary>
public static class StartLevels
{
    /// <summary>Points a week over the four weeks before the season. Common practice, no source.</summary>
    public static int PointsBefore(this StartLevel start) => start switch { StartLevel.Off => 15, StartLevel.Home => 35, _ => 55 };
}
