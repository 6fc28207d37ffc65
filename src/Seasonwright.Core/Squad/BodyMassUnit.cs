namespace Seasonwright.Core.Squad;

/// <summary>Units in which people give a body mass.</summary>
public enum BodyMassUnit
{
    Kilogram,
    Pound,
    Stone,
}
