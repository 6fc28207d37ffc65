using System.Globalization;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Desk;

/// <summary>What a season is called when nobody says otherwise.</summary>
public static class SeasonTitle
{
    /// <summary>"2027" within a year, "2027-28" over New Year.</summary>
    public static string Of(DaySpan days) => days.First.Year == days.Last.Year
        ? days.First.Year.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{days.First.Year}-{days.Last.Year % 100:00}");
}
