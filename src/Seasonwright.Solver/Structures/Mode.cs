namespace Seasonwright.Solver;

/// <summary>What the search remembers of the last week. Load0 to Load6 count the loading weeks of a run; congested and reduced weeks keep the count.</summary>
internal enum Mode
{
    /// <summary>Nothing has been trained yet this season.</summary>
    Start,
    Intro1,
    Intro2,
    Load0,
    Load1,
    Load2,
    Load3,
    Load4,
    Load5,
    Load6,
    Overload,
    Unloading,
    TaperFirst,
    Taper,
    Break,
    ReEntry,
    Transition,
}

internal static class Modes
{
    public const int Count = 17;

    /// <summary>The longest run that is told apart.</summary>
    public const int LongestRun = Mode.Load6 - Mode.Load0;

    public static bool IsLoad(this Mode mode) => mode is >= Mode.Load0 and <= Mode.Load6;

    /// <summary>Loading weeks in the run so far.</summary>
    public static int Run(this Mode mode) => mode.IsLoad() ? mode - Mode.Load0 : mode == Mode.Overload ? 3 : 0;

    public static Mode Load(int run) => Mode.Load0 + Math.Min(run, LongestRun);
}
