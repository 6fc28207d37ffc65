namespace Seasonwright.Core.Seasons;

/// <summary>The kinds of phase. The coach may name a phase freely; the kind stays beneath.</summary>
public enum PhaseKind
{
    GeneralPreparation,
    SpecificPreparation,
    PreCompetition,
    Competition,

    /// <summary>Only around key matches.</summary>
    Peak,
    Transition,
}

/// <summary>What a phase is; the weeks it covers are marked with its id.</summary>
/// <param name="Name">The coach's own name, or null for the kind's.</param>
public sealed record Phase(PhaseKind Kind, string? Name = null);

/// <summary>An unbroken run of weeks of one phase. First and last week are inside.</summary>
public sealed record PhaseRun(PhaseId Id, Phase Phase, SeasonWeek First, SeasonWeek Last);
