namespace Seasonwright.Core.Setups;

/// <summary>What an exercise asks of a body that may have to do without: one for each restriction that a clinician can report.</summary>
public enum Demand
{
    /// <summary>Loaded, the knee bends past 90 degrees.</summary>
    DeepKnee,
    Overhead,
    Sprint,
    Jump,
    ChangeOfDirection,
    Contact,

    /// <summary>The legs work.</summary>
    Legs,

    /// <summary>The arms work, or hold what is lifted.</summary>
    Arms,

    /// <summary>A load along the spine: on the back, the shoulders or in hanging arms.</summary>
    Spine,
}
