using Seasonwright.Core.Calendar;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>
/// The years of dates that name none. First it is seen which dates lie before and which behind New Year, then which year the
/// list starts in: from dates that do name one, from a title, from weekdays and a leap day, from the season planned.
/// </summary>
internal sealed class YearFill
{
    // Lists are of these years; outside, the calendar only repeats itself and would offer a second season.
    private const int Earliest = 2010, Latest = 2049;

    private readonly int?[] filled;

    private YearFill(int?[] filled, SeasonYears? season, string? ask) => (this.filled, Season, Ask) = (filled, season, ask);

    public SeasonYears? Season { get; }

    /// <summary>Id of the open question that the years wait for; null when they are certain enough to be written.</summary>
    public string? Ask { get; }

    public int? YearOf(int index) => filled[index];

    /// <param name="order">Null while the order of day and month is asked: then a year is told only for the dates that do not wait for it.</param>
    public static YearFill Of(IReadOnlyList<LineDate> dates, DayOrder? order, DateHints hints, Asker asker)
    {
        if (order is { } known) return Of(dates, known, hints, asker);
        var told = Enumerable.Range(0, dates.Count).Where(i => !dates[i].Written.Days.Any(day => day.IsSwappable)).ToList();
        // Without a single date told, the year can wait for the answer about the order.
        if (told.Count == 0) return new(new int?[dates.Count], null, null);
        var part = Of([.. told.Select(i => dates[i])], DayOrder.DayFirst, hints, asker);
        var years = new int?[dates.Count];
        foreach (var (i, year) in told.Zip(part.filled)) years[i] = year;
        return new(years, part.Season, part.Ask);
    }

    private static YearFill Of(IReadOnlyList<LineDate> dates, DayOrder order, DateHints hints, Asker asker)
    {
        var years = new int?[dates.Count];
        var lacking = Enumerable.Range(0, dates.Count).Where(i => dates[i].Written.LacksYear).ToList();
        if (lacking.Count == 0) return new(years, null, null);
        var days = dates.Select(date => OfYear(date.Written, order)).ToList();
        var turns = Turns(days);
        var known = Enumerable.Range(0, dates.Count).Except(lacking).Select(i => (Index: i, First: KnownYear(dates[i].Written, order) - turns[i])).ToList();
        if (known.Count > 0)
        {
            // Several seasons in one list: each date takes the year of the nearest line above that has one.
            foreach (var i in lacking)
            {
                var near = known.LastOrDefault(k => k.Index < i, known[0]);
                years[i] = near.First + turns[i];
            }
            return new(years, new SeasonYears(known[0].First, turns.Contains(1)), null);
        }
        if (hints.Named is { } named)
        {
            var inSecond = named.TwoYears && !turns.Contains(1) && days.All(day => day < 7 * 32);
            foreach (var i in lacking) years[i] = named.First + (inSecond ? 1 : turns[i]);
            return new(years, named, null);
        }
        return Asked(dates, order, hints, asker, turns, lacking, years);
    }

    private static YearFill Asked(IReadOnlyList<LineDate> dates, DayOrder order, DateHints hints, Asker asker, int[] turns, List<int> lacking, int?[] years)
    {
        var twoYears = turns.Contains(1);
        var (fits, evidence) = Fits(dates, order, turns);
        var wanted = hints.Season is { } season ? NearestTo(season, dates, order, turns) : hints.Today?.Year;
        var offered = fits.Count == 1 ? fits[0]
            : fits.Count > 1 && wanted is { } near ? fits.MinBy(year => (Math.Abs(year - near), year))
            : fits.Count == 0 && hints.Season is not null ? wanted : null;
        var choices = fits.Count is > 0 and <= 6 ? fits : offered is { } one ? [one] : [];
        var asked = asker.Ask("year", "", lacking.Select(i => dates[i].Line),
            choices.Select(year => new AnswerOption($"{year}", new SeasonYears(year, twoYears).ToString())),
            [lacking.Count, evidence], offered is { } first ? $"{first}" : null, answer => SeasonYears.Find(answer) is not null);
        var start = asked.Answer is { } answer ? SeasonYears.Find(answer)?.First : offered;
        if (start is { } year0) foreach (var i in lacking) years[i] = year0 + turns[i];
        // One single fit of several weekdays is written and shown for confirmation; anything less keeps its mark.
        var isCertain = !asked.IsOpen || fits.Count == 1 && evidence >= 3;
        return new(years, start is { } from ? new SeasonYears(from, twoYears) : null, isCertain ? null : asked.Id);
    }

    /// <summary>Years under which the weekdays written (three in four at least) and every 29 February hold.</summary>
    private static (List<int> Years, int Evidence) Fits(IReadOnlyList<LineDate> dates, DayOrder order, int[] turns)
    {
        var written = dates.SelectMany((date, i) => date.Written.Kind is WrittenKind.Weeks or WrittenKind.Month ? [] : date.Written.Days.Take(1).Select(day => (day, turn: turns[i]))).ToList();
        var telling = written.Where(d => d.day.Weekday is not null || d.day is { First: 29, Second: 2 }).ToList();
        if (telling.Count == 0) return ([], 0);
        var counts = Enumerable.Range(Earliest, Latest - Earliest + 1)
            .Where(year => written.All(d => d.day.In(year + d.turn, order) is not null))
            .Select(year => (year, fitting: telling.Count(d => d.day.Weekday is not { } weekday || d.day.In(year + d.turn, order)!.Value.DayOfWeek == weekday)))
            .ToList();
        var most = counts.Select(c => c.fitting).DefaultIfEmpty(0).Max();
        return most * 4 < telling.Count * 3 ? ([], telling.Count) : (counts.Where(c => c.fitting == most).Select(c => c.year).ToList(), telling.Count);
    }

    // The year that puts most dates into the season's days.
    private static int NearestTo(DaySpan season, IReadOnlyList<LineDate> dates, DayOrder order, int[] turns) =>
        Enumerable.Range(season.First.Year - 1, 3).MaxBy(year => dates.Select((date, i) => date.Written.Days.Select(day => day.In(year + turns[i], order)).FirstOrDefault())
            .Count(day => day is { } d && season.Contains(d)));

    // "20 Dec - 2 Jan 2027" starts in 2026.
    private static int KnownYear(WrittenDate written, DayOrder order) => written.WeekYear ?? written.First.Year
        ?? written.Last!.Value.Year!.Value - (written.First.MonthOf(order) > written.Last.Value.MonthOf(order) ? 1 : 0);

    /// <summary>Month and day as one number that sorts, 32 to a month; a week number is put at its Thursday.</summary>
    public static int OfYear(WrittenDate written, DayOrder order)
    {
        if (written.Kind != WrittenKind.Weeks) return written.First.MonthOf(order) * 32 + (written.First.DayOf(order) ?? 1);
        var day = new DateOnly(2026, 1, 1).AddDays(7 * (written.Week!.Value - 1));
        return day.Month * 32 + day.Day;
    }

    /// <summary>0 for a date in the list's first year, 1 for one behind New Year.</summary>
    private static int[] Turns(List<int> days)
    {
        const int Disorder = 2 * 32;
        var turns = new int[days.Count];
        for (var i = 1; i < days.Count; i++) turns[i] = turns[i - 1] + (days[i] < days[i - 1] - Disorder ? 1 : 0) - (turns[i - 1] > 0 && days[i] > days[i - 1] + 6 * 32 ? 1 : 0);
        var isInOrder = turns.Length == 0 || turns.Max() <= 1 && turns.Zip(turns.Skip(1)).Count(pair => pair.First != pair.Second) <= 1;
        // Rows that step back, if only a little, and a last one more than a year behind the first: no order either.
        var at = turns.Select((turn, i) => turn * 12 * 32 + days[i]).ToList();
        isInOrder = isInOrder && (at.Count == 0 || at.Max() - at.Min() < 12 * 32 || at.Zip(at.Skip(1)).All(pair => pair.First <= pair.Second));
        return isInOrder ? turns : ByLongestPause(days);
    }

    // A list in no order: the season starts behind its longest pause of the year.
    private static int[] ByLongestPause(List<int> days)
    {
        var sorted = days.Distinct().Order().ToList();
        var pauses = sorted.Select((day, i) => (start: day, pause: i == 0 ? day + 12 * 32 - sorted[^1] : day - sorted[i - 1]));
        var start = pauses.MaxBy(p => p.pause).start;
        return [.. days.Select(day => day >= start ? 0 : 1)];
    }
}
