namespace Seasonwright.Core.Squad;

/// <summary>Years of regular strength training, as they were on a day; they grow by themselves.</summary>
public readonly record struct TrainingAge
{
    /// <summary>Most years that can be told.</summary>
    public const int Most = 40;

    /// <param name="years">Whole years, 0 to <see cref="Most"/>.</param>
    /// <param name="on">The day on which they were told.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to <see cref="Most"/>.</exception>
    public TrainingAge(int years, DateOnly on)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(years);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(years, Most);
        (Years, On) = (years, on);
    }

    public int Years { get; }

    public DateOnly On { get; }

    /// <summary>Whole years on a day, at least 0; before <see cref="On"/> fewer.</summary>
    public int YearsOn(DateOnly day)
    {
        var more = day.Year - On.Year;
        if ((day.Month, day.Day).CompareTo((On.Month, On.Day)) < 0) more--;
        return Math.Max(0, Years + more);
    }
}
