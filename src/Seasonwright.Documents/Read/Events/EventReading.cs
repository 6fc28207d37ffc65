using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What is known about an event list besides the list.</summary>
/// <param name="Season">The season's days, once it has been started: gives the years that the list leaves out, and the end of what is open.</param>
/// <param name="Usual">The team's usual order of day and month: offered where it must be asked, never taken on its own.</param>
public sealed record EventReading(DaySpan? Season = null, DayOrder? Usual = null);
