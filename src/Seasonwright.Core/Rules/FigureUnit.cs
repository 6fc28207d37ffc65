namespace Seasonwright.Core.Rules;

/// <summary>What a figure of a rule is counted in.</summary>
public enum FigureUnit
{
    /// <summary>A bare number or ratio.</summary>
    Count,

    /// <summary>1 is the whole; written as per cent for people.</summary>
    Share,

    /// <summary>Per cent of the squad's normal hard week.</summary>
    Points,
    Minutes,
    Hours,
    Days,
    Weeks,
    Rpe,

    /// <summary>Degrees Celsius.</summary>
    Celsius,
}
