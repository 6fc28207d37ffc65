using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>What a door knows besides the list itself.</summary>
/// <param name="Team">Our team's name as the list writes it; null when the list is our own, or to be asked.</param>
/// <param name="Answers">What has been answered so far; null for nothing.</param>
/// <param name="Season">The season's days, offered for dates without a year.</param>
/// <param name="Today">Chooses among years that weekdays fit; null does without.</param>
/// <param name="UsualOrder">The team's date order: offered where it must be asked, never taken on its own.</param>
public sealed record FixtureOptions(string? Team = null, Answers? Answers = null, DaySpan? Season = null, DateOnly? Today = null, DayOrder? UsualOrder = null);
