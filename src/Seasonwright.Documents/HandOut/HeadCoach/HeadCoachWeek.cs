using Seasonwright.Core;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>A week as the head coach needs it, in words.</summary>
/// <param name="Number">1 is the first week of the season.</param>
/// <param name="Days">"11 – 17 Oct".</param>
/// <param name="Phase">The phase that begins with this week; null in the weeks after it and where there is none.</param>
/// <param name="Matches">One line each.</param>
/// <param name="Away">Journeys, days off and whatever else takes days from training, one line each.</param>
/// <param name="Tests">One line each.</param>
public sealed record HeadCoachWeek(
    int Number, string Days, HeadCoachPhase? Phase, WeekFeel? Feel, ValueList<string> Matches, ValueList<string> Away, ValueList<string> Tests);

/// <summary>A phase in plain words.</summary>
/// <param name="Name">As the coach calls it.</param>
/// <param name="Weeks">"weeks 9 to 24".</param>
/// <param name="Means">What it is for, without terms of the trade.</param>
public sealed record HeadCoachPhase(string Name, string Weeks, string Means, PhaseKind Kind);

/// <summary>What is asked of practice in a week.</summary>
public sealed record HeadCoachWish(int Week, string Days, WeekFeel? Feel, string? Text);
