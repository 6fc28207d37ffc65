namespace Seasonwright.Core.Quantities;

/// <summary>Units of weights in the gym.</summary>
public enum MassUnit
{
    Kilogram,
    Pound,
}
