using Seasonwright.Core.Calendar;

namespace Seasonwright.Core.Seasons;

/// <summary>A remark over any span of days. Shown with the hint "no health details".</summary>
public sealed record Note(NoteId Id, DaySpan Days, string Text);
