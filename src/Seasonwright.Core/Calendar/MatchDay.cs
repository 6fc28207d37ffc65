using System.Globalization;

namespace Seasonwright.Core.Calendar;

/// <summary>Where a day lies between the matches around it: days to the next one, days since the last one. A match day is 0 both ways.</summary>
/// <param name="ToNext">0 on a match day, null when no match follows.</param>
/// <param name="SinceLast">0 on a match day, null when no match came before.</param>
public readonly record struct MatchDay(int? ToNext, int? SinceLast)
{
    /// <param name="matchDays">Days of matches by the venue's date, ascending.</param>
    public static MatchDay Of(DateOnly day, IReadOnlyList<DateOnly> matchDays)
    {
        int? toNext = null, sinceLast = null;
        foreach (var match in matchDays)
        {
            var distance = match.DayNumber - day.DayNumber;
            if (distance <= 0) sinceLast = -distance;
            if (distance >= 0) { toNext = distance; break; }
        }
        return new MatchDay(toNext, sinceLast);
    }

    /// <summary>"MD", "MD-2", "MD+1": the nearer neighbour names the day, the coming match where both are equally near.</summary>
    public string Label => (ToNext, SinceLast) switch
    {
        (0, _) => "MD",
        (null, null) => "",
        (null, { } since) => Plus(since),
        ({ } to, null) => Minus(to),
        ({ } to, { } since) => since < to ? Plus(since) : Minus(to),
    };

    private static string Plus(int days) => string.Create(CultureInfo.InvariantCulture, $"MD+{days}");

    private static string Minus(int days) => string.Create(CultureInfo.InvariantCulture, $"MD-{days}");
}
