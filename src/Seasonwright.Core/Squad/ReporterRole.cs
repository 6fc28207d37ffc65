namespace Seasonwright.Core.Squad;

/// <summary>Who tells of somebody's availability.</summary>
public enum ReporterRole
{
    Doctor,

    /// <summary>Physiotherapist or athletic therapist.</summary>
    Therapist,
    Coach,
    Athlete,
    Other,
}
