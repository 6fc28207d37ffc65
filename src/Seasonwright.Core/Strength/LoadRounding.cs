namespace Seasonwright.Core.Strength;

/// <summary>Which weight that there is stands for one that there may not be.</summary>
public enum LoadRounding
{
    /// <summary>The nearest; half-way between two the lighter. Common practice, no source.</summary>
    Nearest,

    /// <summary>The heaviest that is not above it.</summary>
    Down,
}
