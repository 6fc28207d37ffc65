namespace Seasonwright.Solver;

/// <summary>What a journey of the squad's makes of a day.</summary>
public enum WeekTravel
{
    None,

    /// <summary>A long journey, or one of unknown length.</summary>
    Long,

    /// <summary>The squad arrives from a long haul, through the night or over time zones.</summary>
    Arrival,

    /// <summary>The day after such an arrival.</summary>
    After,
}
