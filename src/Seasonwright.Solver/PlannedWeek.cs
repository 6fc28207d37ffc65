using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Solver;

/// <summary>A week as the engine reads it: the facts it plans around.</summary>
/// <param name="Index">0 is the season's first week.</param>
/// <param name="Days">7; in a short first week 1 to 7.</param>
/// <param name="Availability">Share of training possible in per cent, 0 to 130, from events for everyone; days cut off a short first week do not count here.</param>
/// <param name="Matches">In order of day. Those that depend on another are here, as in the rulebook's load of a week.</param>
/// <param name="MatchPoints">What the matches load together, in points, rounded once.</param>
/// <param name="PracticePoints">What the practices load that the head coach has entered; null where none are.</param>
/// <param name="DaysOff">Days without team training that end with the day before this week, by whole weeks.</param>
/// <param name="Lock">What must hold.</param>
/// <param name="Kept">What stands and is left at a price.</param>
/// <param name="Closed">Days on which nobody trains, because of events.</param>
/// <param name="IsSettled">Begun, or locked in the season: what is entered is a fact of the plan. What is wished beside the season is none.</param>
public sealed record PlannedWeek(
    int Index,
    WeekId Id,
    DateOnly First,
    int Days,
    int Availability,
    ValueList<PlannedMatch> Matches,
    int MatchPoints,
    int? PracticePoints,
    int DaysOff,
    WeekLock? Lock,
    WeekLock? Kept,
    bool IsSettled,
    ValueList<DateOnly> Closed)
{
    /// <summary>Settled only because a repair leaves it as it is.</summary>
    public bool IsLeft { get; init; }

    /// <summary>Below this share no team training is planned. Common practice, no source.</summary>
    internal const int BreakBelow = 40;

    /// <summary>Below this share a week only maintains. One day of seven lost leaves a normal week: 6/7 is 86 %. Common practice, no source.</summary>
    private const int ReducedBelow = 85;

    /// <summary>A first week of up to three days is the run-up to the season, no training week; the rulebook counts likewise.</summary>
    private const int FewestDays = 4;

    public int Number => Index + 1;

    public bool Holds(DateOnly day) => day >= First && day.DayNumber < First.DayNumber + Days;

    /// <summary>No team training, because of events or because next to no days are left of it. A locked kind goes before.</summary>
    public bool IsBreak => Lock?.Kind is { } kind ? kind == WeekKind.Break : (Availability < BreakBelow || Days < FewestDays) && Matches.Count == 0;

    /// <summary>Less training possible, for instance exams.</summary>
    public bool IsReduced => !IsBreak && (Lock?.Kind is { } kind ? kind == WeekKind.Reduced : Availability < ReducedBelow);

    /// <summary>Matches are played and next to nothing is trained: a week that was lost.</summary>
    public bool IsLost => IsReduced && Availability < BreakBelow;

    /// <summary>No team training to speak of, whether matches are played or not.</summary>
    public bool IsOff => IsBreak || IsLost;

    /// <summary>It had begun, or was locked, with training in it, and was lost since: nothing of what was planned has been done.</summary>
    public bool WasLost => IsSettled && IsOff && Kept?.Kind is { } kept && kept != Lock?.Kind;

    public int OfficialMatches => Matches.Count(match => match.IsOfficial);

    /// <summary>Whether another week asks the same of a plan: as many matches, as heavy and as important, and as much training possible.</summary>
    public bool IsLike(PlannedWeek other) => (Id, Matches.Count, MatchPoints, OfficialMatches, HasKeyMatch, Availability, PracticePoints) == (other.Id, other.Matches.Count, other.MatchPoints, other.OfficialMatches, other.HasKeyMatch, other.Availability, other.PracticePoints);

    /// <summary>The phase that is settled or kept to; null where nothing stands.</summary>
    public PhaseKind? StandingPhase => IsSettled && Lock?.Phase is { } settled ? settled : Kept?.Phase;

    /// <summary>The load that stands, in points, where the week is to stay of the kind that it was planned as; null otherwise, and for a week that was lost since.</summary>
    public int? Standing(WeekKind kind) => !IsLost && Kept is { Kind: { } kept, Points: { } points } && kept == kind ? points : null;

    public bool HasKeyMatch => Matches.Any(match => match.IsKey);

    /// <summary>The share of a whole week's training that its days leave, in per cent: 100 but for a short first week.</summary>
    public int ShareOfDays => 100 * Days / 7;
}
