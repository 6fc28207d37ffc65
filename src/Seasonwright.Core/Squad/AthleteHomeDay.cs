using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A day at home of one player.</summary>
/// <param name="Week">Of the programme, from 1.</param>
/// <param name="Planned">What is written for it; null for a free day.</param>
/// <param name="IsAway">The player is with somebody else then, and does nothing of this.</param>
/// <param name="Lines">In the order of the workout.</param>
/// <param name="Run">Null for none.</param>
public sealed record AthleteHomeDay(DateOnly Day, int Week, HomeDay? Planned, bool IsAway, ValueList<HomeLine> Lines, AthleteRun? Run)
{
    /// <summary>Nothing is done.</summary>
    public bool IsFree => !IsAway && Lines.Count == 0 && Run is null;
}
