namespace Seasonwright.Core.Setups;

/// <summary>What a quality is to the proposal. A quality of kind <see cref="Other"/> is drawn and not solved.</summary>
public enum QualityKind
{
    /// <summary>With strength endurance.</summary>
    Hypertrophy,
    MaximumStrength,
    Power,

    /// <summary>Speed and acceleration.</summary>
    Speed,
    ChangeOfDirection,

    /// <summary>High-intensity conditioning and repeated sprint.</summary>
    HighIntensityConditioning,
    AerobicConditioning,

    /// <summary>Hamstring, groin, calf, shoulder, neck, by sport.</summary>
    Prevention,
    Other,
}
