using Seasonwright.Core;

namespace Seasonwright.Solver;

/// <summary>A week with what the calendar around it says, worked out once.</summary>
/// <param name="Cycle">Null after the last competition period.</param>
/// <param name="Lengths">Of the phases of its preparation.</param>
/// <param name="IsCompetition">From the first to the last official match of its period.</param>
/// <param name="Taper">Which part of a taper it is to be.</param>
/// <param name="Back">How long the squad is back from an absence.</param>
/// <param name="Before">The week before; null for the first.</param>
/// <param name="MatchBefore">Match points of the last week before that had one match at most and no break.</param>
/// <param name="HasOneMatchWeekBefore">Whether any earlier week held exactly one match.</param>
/// <param name="IsFirstLight">One match at most after two weeks or more of two.</param>
/// <param name="IsBeforeRest">The week after is a break or lies behind the last official match of the season.</param>
/// <param name="Trained">Training weeks of its preparation before it.</param>
/// <param name="TrainingWeeks">Training weeks of its whole preparation.</param>
/// <param name="Weight">Units of value that a point of training adds through preparedness.</param>
/// <param name="Goal">Units of value of a loading week in each phase, by <see cref="Core.Seasons.PhaseKind"/>.</param>
internal sealed record WeekFacts(
    PlannedWeek Week,
    Cycle? Cycle,
    PhaseLengths Lengths,
    bool IsCompetition,
    Variant Taper,
    WeekBack Back,
    WeekFacts? Before,
    int MatchBefore,
    bool HasOneMatchWeekBefore,
    bool IsFirstLight,
    bool IsBeforeRest,
    int Trained,
    int TrainingWeeks,
    long Weight,
    ValueList<long> Goal)
{
    /// <summary>One of the two weeks before a competition period: loads need not rise any more.</summary>
    public bool IsLastBeforeCompetition => IsPreparation && Cycle is { } cycle && cycle.First <= cycle.Last && cycle.First - Week.Index <= 2;

    /// <summary>The week is settled and so is the one before: what a rule asks of both was decided by the coach.</summary>
    public bool IsGiven => Week.IsSettled && Before is not { Week.IsSettled: false };

    public bool IsPreparation => Cycle is not null && !IsCompetition;

    /// <summary>The first week of its preparation.</summary>
    public bool IsCycleStart => Cycle is { } cycle && cycle.Start == Week.Index;

    public bool IsCongested => Week.Matches.Count > 1;

    /// <summary>Two matches or more, and nothing else that would make it lighter still.</summary>
    public bool LoadsCongested => IsCongested && !Week.IsReduced;

    /// <summary>One match, and an official one, in the competition.</summary>
    public bool IsOneMatchWeek => IsCompetition && Week.Matches.Count == 1 && Week.OfficialMatches == 1;

    /// <summary>Neither adds to a run of loading weeks nor ends it.</summary>
    public bool IsHold => IsCongested || Week.IsReduced;

    /// <summary>The preparation begins with a transition.</summary>
    public bool HasTransition => Lengths.Transition.Most > 0;
}
