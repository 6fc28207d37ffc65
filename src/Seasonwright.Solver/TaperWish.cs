using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>What the coach says of the taper before one key match; where nothing is said the engine chooses.</summary>
public sealed record TaperWish(MatchId Match, TaperStyle Style);

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
