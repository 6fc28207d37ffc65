namespace Seasonwright.Core.Calendar;

/// <summary>A time in which a zone's clock keeps one offset.</summary>
/// <param name="From">The change that begins it, on the clock as it went until then; the year 1601 where it has gone so for ever.</param>
/// <param name="Before">Offset from UTC until then.</param>
/// <param name="Offset">Offset from UTC from then on.</param>
/// <param name="Name">The zone's abbreviation, for instance "CEST".</param>
/// <param name="IsSummer">Whether the clock is put forward for the summer.</param>
public sealed record ClockStretch(DateTime From, TimeSpan Before, TimeSpan Offset, string Name, bool IsSummer);
