namespace Seasonwright.Core.Seasons;

/// <summary>How the squad comes into the season: what it did in the four weeks before.</summary>
public enum StartLevel
{
    /// <summary>Next to nothing.</summary>
    Off,

    /// <summary>A home programme.</summary>
    Home,

    /// <summary>Training was kept up.</summary>
    Kept,
}
