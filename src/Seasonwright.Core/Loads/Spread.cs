namespace Seasonwright.Core.Loads;

/// <summary>Which standard deviation monotony divides by. The papers' text names neither; the sample's is ours.</summary>
public enum Spread
{
    /// <summary>n - 1.</summary>
    Sample,

    /// <summary>n.</summary>
    Population,
}
