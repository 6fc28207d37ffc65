namespace Seasonwright.Core.Squad;

/// <summary>How a player who comes back begins, by what was done elsewhere beside the squad's.</summary>
public enum BackAdvice
{
    /// <summary>Nobody told what was done: ask before the first session.</summary>
    Ask,

    /// <summary>More than the squad did.</summary>
    Lighter,

    AsSquad,

    /// <summary>Less than the squad did: something is to be made up for, step by step.</summary>
    More,
}
