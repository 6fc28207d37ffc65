namespace Seasonwright.Core.Squad;

/// <summary>Whether somebody trains; each is tighter than the one before.</summary>
public enum AvailabilityState
{
    Full,
    Modified,
    Out,
}
