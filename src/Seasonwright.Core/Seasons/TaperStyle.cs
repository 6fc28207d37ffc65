namespace Seasonwright.Core.Seasons;

/// <summary>How a match is tapered for.</summary>
public enum TaperStyle
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>One reduced week.</summary>
    Short,

    /// <summary>Two reduced weeks.</summary>
    Full,
}
