using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What is known about an event list besides the list.</summary>
/// <param name="Answers">What has been answered so far; null for nothing.</param>
/// <param name="Season">The season's days, once it has been started: gives the years that the list leaves out, and the end of what is open.</param>
/// <param name="Today">Chooses among years that weekdays fit; null does without.</param>
/// <param name="UsualOrder">The team's usual order of day and month: offered where it must be asked, never taken on its own.</param>
public sealed record EventReading(Answers? Answers = null, DaySpan? Season = null, DateOnly? Today = null, DayOrder? UsualOrder = null);
