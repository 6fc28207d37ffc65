namespace Seasonwright.Core.Strength;

/// <summary>Why velocities tell no maximum.</summary>
public enum VelocityTrouble
{
    /// <summary>Fewer than two different loads.</summary>
    OneLoad,

    /// <summary>Velocity does not fall as load rises.</summary>
    NotFalling,

    /// <summary>The line is at the threshold, or below it, where nothing is lifted.</summary>
    BelowThreshold,

    /// <summary>The line reaches the threshold far beyond what was lifted.</summary>
    FarFromLifted,
}
