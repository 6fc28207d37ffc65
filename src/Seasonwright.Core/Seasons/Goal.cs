namespace Seasonwright.Core.Seasons;

/// <summary>One of up to three goals agreed with the head coach: a test measure or squad availability.</summary>
/// <param name="Rank">1 is the first goal.</param>
/// <param name="Measure">What is measured, with its unit, for instance "countermovement jump, cm".</param>
/// <param name="From">Where the squad stands.</param>
/// <param name="To">Where it should be.</param>
/// <param name="By">When; null for the season's end.</param>
/// <param name="Quality">The quality that serves it, for the proposal; null where none does.</param>
public sealed record Goal(GoalId Id, int Rank, string Measure, decimal? From = null, decimal? To = null, DateOnly? By = null, QualityId? Quality = null);
