namespace Seasonwright.Core.Squad;

/// <summary>What a person must not do for now: a closed list, so that sessions can be checked against it. No diagnosis.</summary>
public enum RestrictionTag
{
    /// <summary>No loaded knee flexion past 90 degrees.</summary>
    NoLoadedKneeFlexionPast90,
    NoOverhead,
    NoSprint,
    NoJump,
    NoChangeOfDirection,
    NoContact,
    UpperBodyOnly,
    LowerBodyOnly,

    /// <summary>No load along the spine: no bar on the back, shoulders or in hanging arms.</summary>
    NoAxialLoad,
}
