namespace Seasonwright.Solver;

/// <summary>Which of its sort a week is, where a kind has several.</summary>
public enum Variant
{
    None,

    /// <summary>The first of two introductory weeks, or of two weeks back after a long break.</summary>
    First,

    /// <summary>The second of them.</summary>
    Second,

    /// <summary>Back after a single week off.</summary>
    WeekOff,

    /// <summary>The only week of a short taper.</summary>
    Short,

    /// <summary>A week of a taper of several weeks, its last one aside.</summary>
    FullEarlier,

    /// <summary>The week before one of several matches among which the tapered-for match is: as long as a short taper and as light.</summary>
    BeforeMany,

    /// <summary>The last week of a taper of several weeks, or the week of several matches itself.</summary>
    FullLast,
}
