namespace Seasonwright.Core.Seasons;

/// <summary>What a session is. Practices are the head coach's, every other kind is ours. What each means for load and qualities: the table of session uses in a team's setup.</summary>
public enum SessionKind
{
    /// <summary>The head coach's: planned around, never moved by us.</summary>
    Practice,

    /// <summary>Heavy lower-body strength.</summary>
    LowerStrength,

    /// <summary>Two hard sets a pattern at most, heavy enough to keep strength and small enough to leave fresh legs.</summary>
    SmallDose,

    UpperStrength,

    /// <summary>Many hard sets for muscle and strength endurance, legs included.</summary>
    Hypertrophy,

    /// <summary>Loaded and unloaded jumps, throws, fast lifts.</summary>
    Power,

    /// <summary>Acceleration, maximal speed and change of direction, fresh and with full rests.</summary>
    Speed,

    /// <summary>High-intensity conditioning and repeated sprint.</summary>
    Intervals,

    /// <summary>Aerobic conditioning.</summary>
    Endurance,

    /// <summary>Hamstring, groin, calf, shoulder, neck, by sport.</summary>
    Prevention,

    /// <summary>Short and light, to feel ready for a match.</summary>
    Activation,

    Recovery,

    Test,
}
