namespace Seasonwright.Documents.Year;

/// <summary>How much of the year is seen at once.</summary>
public enum YearZoom
{
    /// <summary>Every week of the season.</summary>
    Season,

    /// <summary>A quarter or so: columns wide enough for words.</summary>
    Week,

    /// <summary>A few weeks, with a column for every day.</summary>
    Day,
}
