namespace Seasonwright.Core.Seasons;

/// <summary>What a week is for.</summary>
public enum WeekKind
{
    Introductory,
    Building,

    /// <summary>The hardest of its block.</summary>
    Overload,
    Unloading,
    Taper,

    /// <summary>One match.</summary>
    Competition,

    /// <summary>Two or more matches.</summary>
    Congested,

    /// <summary>After a break. "Return" is kept for injured athletes.</summary>
    ReEntry,
    Break,

    /// <summary>Less training possible, for instance exams.</summary>
    Reduced,
    Transition,
}

/// <summary>What a week kind means for its block.</summary>
public static class WeekKinds
{
    public static bool IsLoading(this WeekKind kind) => kind is WeekKind.Building or WeekKind.Overload or WeekKind.Competition or WeekKind.Congested;

    /// <summary>A week that ends a block.</summary>
    public static bool IsClosing(this WeekKind kind) => kind is WeekKind.Unloading or WeekKind.Taper;
}
