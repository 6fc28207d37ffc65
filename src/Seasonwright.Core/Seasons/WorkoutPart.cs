namespace Seasonwright.Core.Seasons;

/// <summary>How the exercises of a part follow each other.</summary>
public enum PartKind
{
    /// <summary>To get ready: it counts no hard sets and stays the same every week.</summary>
    WarmUp,

    /// <summary>All sets of one exercise, then the next.</summary>
    Straight,

    /// <summary>A set of each in turn, rest after the last.</summary>
    Superset,

    /// <summary>Stations that people go round.</summary>
    Circuit,
}

/// <summary>A part of a workout.</summary>
/// <param name="Rest">Seconds after a set, of a superset or circuit after a round: 0 to 900.</param>
public sealed record WorkoutPart(PartKind Kind, ValueList<WorkoutItem> Items, int Rest)
{
    public const int MostRest = 900, MostItems = 12;

    /// <summary>Whether its sets are work and not getting ready.</summary>
    public bool IsWork => Kind != PartKind.WarmUp;
}
