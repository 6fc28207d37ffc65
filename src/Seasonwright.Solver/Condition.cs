namespace Seasonwright.Solver;

/// <summary>
/// Something that a plan is held to: a wish, a rule's limit or a planning preference. One table serves the search that refuses what
/// goes against it and the search that pays for it and so finds the plan that breaks least.
/// </summary>
/// <param name="Name">Names it in messages.</param>
/// <param name="Rule">Id of the rule it serves; empty for a planning preference.</param>
/// <param name="Weight">How dear it is beside the others when it must be broken.</param>
public sealed record Condition(string Name, string Rule = "", int Weight = 1)
{
    public static readonly Condition ShortestTransition = new("shortest-transition", "transition-length");
    public static readonly Condition LongestTransition = new("longest-transition", "transition-length");
    public static readonly Condition ShortestGeneral = new("shortest-general", "general-before-specific");
    public static readonly Condition LongestGeneral = new("longest-general");
    public static readonly Condition ShortestSpecific = new("shortest-specific");
    public static readonly Condition LongestSpecific = new("longest-specific");
    public static readonly Condition ShortestPreCompetition = new("shortest-pre-competition");
    public static readonly Condition LongestPreCompetition = new("longest-pre-competition");

    public static readonly Condition IntroductoryFirst = new("introductory-first");
    public static readonly Condition WeekBack = new("week-back", "return-after-break-volume");
    public static readonly Condition RunLimit = new("run-limit", "building-run-too-long");
    public static readonly Condition UnloadingAfterLoading = new("unloading-after-loading");
    public static readonly Condition OverloadInItsPlace = new("overload-in-its-place");
    public static readonly Condition Taper = new("taper", "taper-length", 3);

    public static readonly Condition Ramp = new("ramp", "weekly-ramp");
    public static readonly Condition UnloadingSize = new("unloading-size", "unloading-size");
    public static readonly Condition TaperSize = new("taper-size", "taper-volume");
    public static readonly Condition Progression = new("progression");
    public static readonly Condition NewBlock = new("new-block");
    public static readonly Condition NoAbruptDrop = new("no-abrupt-drop");
    public static readonly Condition RisingBack = new("rising-back");
    public static readonly Condition ReEntry = new("re-entry", "return-after-break-volume");
    public static readonly Condition LightCongestion = new("light-congestion", "heavy-week-in-congestion");
    public static readonly Condition Spike = new("spike", "trailing-four-spike");
    public static readonly Condition Base = new("base-load", "base-load-low");
    public static readonly Condition TaperFrequency = new("taper-frequency", "taper-intensity-frequency");
    public static readonly Condition LargestWeek = new("largest-week", "", 2);

    public static readonly Condition TrainingTime = new("training-time", "", 2);

    public static readonly Condition LockedPhase = new("locked-phase", "", 3);
    public static readonly Condition LockedKind = new("locked-kind", "", 3);
    public static readonly Condition LockedLoad = new("locked-load", "", 3);

    public static IReadOnlyList<Condition> All { get; } =
    [
        ShortestTransition, LongestTransition, ShortestGeneral, LongestGeneral, ShortestSpecific, LongestSpecific, ShortestPreCompetition, LongestPreCompetition,
        IntroductoryFirst, WeekBack, RunLimit, UnloadingAfterLoading, OverloadInItsPlace, Taper,
        Ramp, UnloadingSize, TaperSize, Progression, NewBlock, NoAbruptDrop, RisingBack, ReEntry, LightCongestion, Spike, Base, TaperFrequency, LargestWeek, TrainingTime,
        LockedPhase, LockedKind, LockedLoad,
    ];

    /// <summary>The condition of a name; null for none.</summary>
    public static Condition? Find(string name) => All.FirstOrDefault(condition => condition.Name == name);

    /// <summary>In the coach's words.</summary>
    public string Words => PlanWords.Of(this);

    /// <summary>Wishes stand for one week each and are told apart by it.</summary>
    public bool IsLock => this == LockedPhase || this == LockedKind || this == LockedLoad;

    /// <summary>Says what a kind of week is: it may be broken at a price and is never offered for leaving out.</summary>
    public bool IsDefinition => this == IntroductoryFirst || this == WeekBack || this == UnloadingAfterLoading || this == OverloadInItsPlace;

    /// <summary>Says how long a phase lasts.</summary>
    public bool IsAboutPhase => this == ShortestTransition || this == LongestTransition || this == ShortestGeneral || this == LongestGeneral || this == ShortestSpecific || this == LongestSpecific
        || this == ShortestPreCompetition || this == LongestPreCompetition;

    /// <summary>Asks something of a load, not of a place.</summary>
    public bool IsAboutLoad => this == Ramp || this == UnloadingSize || this == TaperSize || this == Progression || this == NewBlock || this == NoAbruptDrop || this == RisingBack || this == ReEntry
        || this == LightCongestion || this == Spike || this == Base || this == LargestWeek || this == TrainingTime || this == LockedLoad;
}
