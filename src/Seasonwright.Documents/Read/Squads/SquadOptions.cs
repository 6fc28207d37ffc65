using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What a door knows besides the list itself.</summary>
/// <param name="Today">Tells the century of years in two figures, and days of birth that cannot be.</param>
/// <param name="Answers">What has been answered so far; null for nothing.</param>
/// <param name="UsualOrder">The team's order of day and month: offered where it must be asked, never taken on its own.</param>
/// <param name="Unit">The team's unit of weight, for figures whose unit the list does not say: it holds until that question is answered.</param>
public sealed record SquadOptions(DateOnly Today, Answers? Answers = null, DayOrder? UsualOrder = null, MassUnit Unit = MassUnit.Kilogram);
