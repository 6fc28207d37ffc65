using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Documents.Year;

/// <summary>Where a week stands in the drawing.</summary>
/// <param name="Week">The week.</param>
/// <param name="X">Left edge, px at 1x.</param>
/// <param name="Width">px; every column is equally wide and holds seven days, also that of a short first week.</param>
public sealed record WeekColumn(SeasonWeek Week, double X, double Width)
{
    public double Right => X + Width;

    public double Centre => X + Width / 2;

    public double DayWidth => Width / 7;

    /// <summary>Left edge of a day of this week. The days of a short first week stand at the right, under their weekday.</summary>
    public double XOf(DateOnly day) => X + SlotOf(day) * DayWidth;

    /// <summary>Place of a day in the week, 0 for the week start to 6.</summary>
    public int SlotOf(DateOnly day) => 6 - (Week.Days.Last.DayNumber - day.DayNumber);

    /// <summary>The day under a place across; the first of a short week left of its days.</summary>
    public DateOnly DayAt(double x)
    {
        var slot = Math.Clamp((int)Math.Floor((x - X) / DayWidth), SlotOf(Week.Days.First), 6);
        return Week.Days.Last.AddDays(slot - 6);
    }
}
