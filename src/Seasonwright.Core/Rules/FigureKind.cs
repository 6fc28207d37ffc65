namespace Seasonwright.Core.Rules;

/// <summary>What form a figure of a rule has.</summary>
public enum FigureKind
{
    Number,

    /// <summary>As many numbers as the default has, parted by spaces.</summary>
    Numbers,

    /// <summary>"yes" or "no".</summary>
    YesNo,

    /// <summary>One of some words.</summary>
    Choice,

    /// <summary>Free words, parted by commas.</summary>
    Words,

    /// <summary>A day, ISO 8601; empty for none.</summary>
    Day,
}
