namespace Seasonwright.Core.Strength;

/// <summary>How the repetitions of a zone lie to its printed range, both ends of which are inside.</summary>
public enum ZoneVolume
{
    Below,
    InRange,

    /// <summary>The printed best total itself.</summary>
    Optimal,
    Above,
}
