using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>Where a sheet says its dates: one line whose places are weeks, or days.</summary>
/// <param name="Line">The line that says them.</param>
/// <param name="Places">The days of each place; places between them that are none (repeated headings, sums) are not in it.</param>
internal sealed record WeekAxis(SheetView View, int Line, SortedDictionary<int, DaySpan> Places)
{
    /// <summary>Fewer dates in a line are no year.</summary>
    public const int Fewest = 4;

    /// <summary>More are no year, even of days.</summary>
    public const int Most = 400;

    private readonly Lazy<ILookup<int, SheetCell>> inFront = new(() => View.Sheet.Cells.Where(cell => !cell.IsEmpty && View.PlaceOf(cell.At) < Places.Keys.First()).ToLookup(cell => View.LineOf(cell.At)));

    public int First => Places.Keys.First();

    /// <summary>By line, what stands in front of the first place, in order.</summary>
    public ILookup<int, SheetCell> Before => inFront.Value;

    /// <summary>The place nearest in front of the first one where anything stands, itself where nothing does.</summary>
    public int HeadingPlace => Before.SelectMany(line => line).Select(cell => View.PlaceOf(cell.At)).DefaultIfEmpty(First).Max();

    public int Last => Places.Keys.Last();

    public DaySpan Days => new(Places.First().Value.First, Places.Last().Value.Last);

    /// <summary>The lines that its dates hold for, itself included: a sheet may lay a year out in several bands.</summary>
    public (int From, int Until) Band { get; private init; } = (0, int.MaxValue);

    public bool Holds(int line) => line >= Band.From && line < Band.Until;

    /// <summary>
    /// The line with most dates a week or a day apart, of both ways to look at the sheet, and those that go on from it further down, in
    /// the order of days; empty when there is none.
    /// </summary>
    public static IReadOnlyList<WeekAxis> Find(Sheet sheet, IReadOnlyList<SeasonYears> years, Asker asker)
    {
        var views = new[] { new SheetView(sheet, false), new SheetView(sheet, true) };
        var dated = views.SelectMany(view => view.Lines.Select(line => Dated(view, line.Key, [.. line]))).OfType<WeekAxis>().ToList();
        if (dated.MaxBy(axis => axis.Places.Count) is { } best) return Bands(best, dated);
        return (views.SelectMany(view => view.Lines.Select(line => InMonths(view, line.Key, [.. line], years, asker))).OfType<WeekAxis>().MaxBy(axis => axis.Places.Count)
            ?? views.SelectMany(view => view.Lines.Select(line => Numbered(view, line.Key, [.. line], years, asker))).OfType<WeekAxis>().MaxBy(axis => axis.Places.Count)) is { } only ? [only] : [];
    }

    // Half a year above, half a year below: dates that go on where the others end, in a line further down with rows between.
    private static List<WeekAxis> Bands(WeekAxis best, List<WeekAxis> dated)
    {
        var bands = new List<WeekAxis> { best };
        foreach (var axis in dated.Where(axis => axis.View == best.View).OrderBy(axis => axis.Line))
        {
            if (axis.Line > bands[^1].Line + 1 && axis.Days.First.DayNumber - bands[^1].Days.Last.DayNumber is > 0 and <= Gap) bands.Add(axis);
            if (axis.Line < bands[0].Line - 1 && bands[0].Days.First.DayNumber - axis.Days.Last.DayNumber is > 0 and <= Gap) bands.Insert(0, axis);
        }
        return [.. bands.Select((band, i) => band with { Band = (i == 0 ? 0 : band.Line, i + 1 < bands.Count ? bands[i + 1].Line : int.MaxValue) })];
    }

    // Days without a place between two bands, for instance a summer break; last year's dates lie further away or in the next line.
    private const int Gap = 35;

    private static WeekAxis? Dated(SheetView view, int line, List<SheetCell> cells)
    {
        var real = cells.Where(cell => cell.Value is CellValue.Day).Select(cell => (Place: view.PlaceOf(cell.At), ((CellValue.Day)cell.Value).Date)).ToList();
        var written = cells.Where(cell => cell.Value is CellValue.Words && cell.Text.Length <= 24 && cell.Text.Any(char.IsAsciiDigit))
            .Select(cell => (Cell: cell, Date: DateText.Find(cell.Text))).Where(found => found.Date is { Kind: WrittenKind.Day or WrittenKind.WeekOf or WrittenKind.Span }).ToList();
        if (real.Count + written.Count < Fewest) return null;
        // Written days are decided together, as in any list.
        var dates = written.ConvertAll(found => new LineDate(found.Cell.Row, found.Date!));
        var (order, _, _) = DateColumn.OrderOf(dates, new DateHints(), new Asker(Answers.None));
        var all = real.Concat(written.Select(found => (Place: view.PlaceOf(found.Cell.At), Date: InRow(found.Date!, order, view.PlaceOf(found.Cell.At), real)))
                .Where(found => found.Date is not null).Select(found => (found.Place, found.Date!.Value)))
            .Where(date => DateColumn.IsPossible(date.Item2)).OrderBy(date => date.Item1).ToList();
        return Run(all) is { } run ? Of(view, line, run) : null;
    }

    // What a written day means: by the order the others show, else the reading that fits between its neighbours.
    private static DateOnly? InRow(WrittenDate written, DayOrder? order, int place, List<(int Place, DateOnly Date)> real)
    {
        var before = real.Where(date => date.Place < place).Select(date => (DateOnly?)date.Date).LastOrDefault();
        var after = real.Where(date => date.Place > place).Select(date => (DateOnly?)date.Date).FirstOrDefault();
        var years = written.First.Year is { } own ? [own] : new[] { before?.Year, after?.Year }.OfType<int>().Distinct();
        var readings = years.SelectMany(year => (order is { } known ? [known] : new[] { DayOrder.DayFirst, DayOrder.MonthFirst }).Select(way => written.First.In(year, way))).OfType<DateOnly>().Distinct().ToList();
        var fitting = readings.Where(day => (before is null || day > before) && (after is null || day < after)).ToList();
        return fitting.Count == 1 ? fitting[0] : readings.Count == 1 ? readings[0] : null;
    }

    /// <summary>The longest run of dates that rise by at most two weeks and mostly by a week or a day.</summary>
    private static List<(int Place, DateOnly Date)>? Run(List<(int Place, DateOnly Date)> dates)
    {
        List<(int Place, DateOnly Date)> best = [], run = [];
        foreach (var date in dates)
        {
            if (run.Count > 0 && date.Date.DayNumber - run[^1].Date.DayNumber is not (>= 1 and <= 28)) run = [];
            run.Add(date);
            if (run.Count > best.Count) best = run;
        }
        if (best.Count is < Fewest or > Most) return null;
        var steps = best.Zip(best.Skip(1)).Select(pair => pair.Second.Date.DayNumber - pair.First.Date.DayNumber).ToList();
        return steps.Count(step => step is 7 or 1) * 3 >= steps.Count * 2 ? best : null;
    }

    private static WeekAxis Of(SheetView view, int line, List<(int Place, DateOnly Date)> dates)
    {
        var step = dates.Zip(dates.Skip(1)).Count(pair => pair.Second.Date == pair.First.Date.AddDays(1)) * 2 > dates.Count ? 1 : 7;
        var starts = new SortedDictionary<int, DateOnly>();
        foreach (var (place, date) in dates) starts[place] = date;
        foreach (var (one, next) in dates.Zip(dates.Skip(1)))
        {
            // A gap of as many weeks as it has places with an error or without a date in them: those places are these weeks.
            var missing = (next.Date.DayNumber - one.Date.DayNumber - 1) / step;
            var between = Enumerable.Range(one.Place + 1, next.Place - one.Place - 1).ToList();
            if (between.Count > missing) between = [.. between.Where(place => view[line, place] is { Value: CellValue.Error or CellValue.Words })];
            if (missing == 0 || between.Count != missing) continue;
            for (var i = 0; i < missing; i++) starts[between[i]] = next.Date.AddDays(-step * (missing - i));
        }
        var places = new SortedDictionary<int, DaySpan>();
        var ordered = starts.ToList();
        for (var i = 0; i < ordered.Count; i++)
        {
            var last = ordered[i].Value.AddDays(step - 1);
            places[ordered[i].Key] = new(ordered[i].Value, i + 1 < ordered.Count && ordered[i + 1].Value <= last ? ordered[i + 1].Value.AddDays(-1) : last);
        }
        return new(view, line, places);
    }

    // Numbers of days under a line of months: "July" over 6, 13, 20, 27.
    private static WeekAxis? InMonths(SheetView view, int line, List<SheetCell> cells, IReadOnlyList<SeasonYears> years, Asker asker)
    {
        var numbers = cells.Select(cell => (Place: view.PlaceOf(cell.At), Day: DayNumber(cell))).Where(day => day.Day is not null).Select(day => (day.Place, Day: day.Day!.Value)).OrderBy(day => day.Place).ToList();
        if (numbers.Count is < Fewest or > Most) return null;
        foreach (var above in view.Lines.Where(other => other.Key < line && other.Key >= line - MostBetween).Reverse())
        {
            var months = above.Select(cell => (Place: view.PlaceOf(cell.At), Month: MonthOf(cell))).Where(month => month.Month is not null).Select(month => (month.Place, month.Month!.Value.Year, month.Month.Value.Month)).OrderBy(month => month.Place).ToList();
            if (months.Count < 2 || months[0].Place > numbers[^1].Place) continue;
            int? first = months[0].Year ?? (years.Count > 0 ? YearOf(years[0], months[0].Month) : null);
            if (first is null && asker.Ask("sheet-year", "", [], [], [], null, answer => SeasonYears.Find(answer) is not null, "Q-year").Answer is { } answer && SeasonYears.Find(answer) is { } said) first = YearOf(said, months[0].Month);
            if (first is not { } year) return null;
            var starts = new List<(int Place, DateOnly First)>();
            foreach (var (place, own, month) in months) starts.Add((place, new(year = own ?? (starts.Count > 0 && month < starts[^1].First.Month ? year + 1 : year), month, 1)));
            var dates = new List<(int Place, DateOnly Date)>();
            foreach (var (place, day) in numbers)
            {
                // A month's name may stand over the week that begins before it, or behind the one that it begins in.
                var month = starts.LastOrDefault(start => start.Place <= place, starts[0]).First;
                var readings = new[] { 0, -1, 1 }.Select(shift => month.AddMonths(shift)).Where(start => day <= DateTime.DaysInMonth(start.Year, start.Month)).Select(start => new DateOnly(start.Year, start.Month, day)).ToList();
                if (readings.Count == 0) continue;
                dates.Add((place, dates.Count == 0 ? readings[0] : readings.FirstOrDefault(reading => reading.DayNumber - dates[^1].Date.DayNumber is 7 or 1, readings[0])));
            }
            if (Run(dates) is { } run && run.Count * 5 >= numbers.Count * 4) return Of(view, line, run);
        }
        return null;

        static int YearOf(SeasonYears season, int month) => season.TwoYears && month < 5 ? season.First + 1 : season.First;
    }

    // Lines between the months and the days, for instance the numbers of the weeks.
    private const int MostBetween = 3;

    private static int? DayNumber(SheetCell cell) => cell.Value is CellValue.Number { Amount: >= 1 and <= 31 and var amount } && amount == Math.Floor(amount) ? (int)amount
        : cell.Value is CellValue.Words && int.TryParse(Spelling.Tidy(cell.Text).TrimEnd('.'), NumberStyles.None, CultureInfo.InvariantCulture, out var day) && day is >= 1 and <= 31 ? day : null;

    private static (int? Year, int Month)? MonthOf(SheetCell cell) => cell.Value is CellValue.Day { Date: var date } ? DateColumn.IsPossible(date) ? (date.Year, date.Month) : null
        : cell.Value is CellValue.Words && DateText.Find(cell.Text, months: true) is { Kind: WrittenKind.Month, First: var month } && (month.Year is not { } year || DateColumn.IsPossible(new(year, month.Second, 1))) ? (month.Year, month.Second) : null;

    // "KW 34", or bare numbers under a word for weeks.
    private static WeekAxis? Numbered(SheetView view, int line, List<SheetCell> cells, IReadOnlyList<SeasonYears> years, Asker asker)
    {
        var isNamed = cells.Any(cell => cell.Value is CellValue.Words && cell.Text.Split([' ', '.', ':'], StringSplitOptions.RemoveEmptyEntries).Any(CalendarWords.IsWeek));
        var numbers = cells.Select(cell => (Place: view.PlaceOf(cell.At), Number: WeekOf(cell, isNamed))).Where(week => week.Number is not null).Select(week => (week.Place, Number: week.Number!.Value)).OrderBy(week => week.Place).ToList();
        var rising = numbers.Zip(numbers.Skip(1)).Count(pair => pair.Second.Number == pair.First.Number + 1 || pair.Second.Number == 1 && pair.First.Number >= 52);
        if (numbers.Count is < Fewest or > Most || rising * 5 < (numbers.Count - 1) * 4) return null;
        // Where the numbers fall, a new year has begun; they do so once.
        var turns = Enumerable.Range(1, numbers.Count - 1).FirstOrDefault(i => numbers[i].Number < numbers[i - 1].Number, -1);
        if (turns > 0 && numbers.Skip(turns).Zip(numbers.Skip(turns + 1)).Any(pair => pair.Second.Number <= pair.First.Number) || turns > 0 && numbers[^1].Number >= numbers[0].Number) return null;
        if (turns < 0 && numbers[0].Number < 20) return numbers.Zip(numbers.Skip(1)).Any(pair => pair.Second.Number <= pair.First.Number) ? null : Counted(view, line, numbers, asker);
        var longYear = turns > 0 && numbers[turns - 1].Number == 53;
        var fits = years.Where(year => !longYear || IsoWeek.WeeksIn(year.First) == 53).Select(year => year.First).Distinct().ToList();
        var asked = asker.Ask("sheet-year", "", [], (fits.Count > 0 ? fits : Near(longYear)).Select(year => new AnswerOption(FormattableString.Invariant($"{year}"), new SeasonYears(year, turns > 0).ToString())), [],
            fits.Count == 1 ? FormattableString.Invariant($"{fits[0]}") : null, answer => SeasonYears.Find(answer) is not null, "Q-year");
        if ((asked.Answer is { } answer ? SeasonYears.Find(answer)?.First : fits.Count == 1 ? fits[0] : null) is not { } first) return null;
        var places = new SortedDictionary<int, DaySpan>();
        for (var i = 0; i < numbers.Count; i++)
        {
            var year = turns > 0 && i >= turns ? first + 1 : first;
            if (numbers[i].Number <= IsoWeek.WeeksIn(year)) places[numbers[i].Place] = new IsoWeek(year, numbers[i].Number).Days;
        }
        return places.Count < Fewest ? null : new(view, line, places);
    }

    private static IEnumerable<int> Near(bool longYear) => longYear ? Enumerable.Range(2015, 20).Where(year => IsoWeek.WeeksIn(year) == 53) : [];

    // Weeks counted from the first: only the coach knows when that is.
    private static WeekAxis? Counted(SheetView view, int line, List<(int Place, int Number)> numbers, Asker asker)
    {
        var asked = asker.Ask("sheet-first", "", [], [], [numbers.Count], takes: answer => DateOnly.TryParseExact(answer, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && DateColumn.IsPossible(day), name: "Q-first-day");
        if (asked.Answer is null || !DateOnly.TryParseExact(asked.Answer, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var first)) return null;
        var places = new SortedDictionary<int, DaySpan>();
        foreach (var (place, number) in numbers) places[place] = new(first.AddDays(7 * (number - 1)), first.AddDays(7 * number - 1));
        return new(view, line, places);
    }

    private static int? WeekOf(SheetCell cell, bool isNamed)
    {
        if (cell.Value is CellValue.Number { Amount: >= 1 and <= 53 and var amount } && isNamed && amount == Math.Floor(amount)) return (int)amount;
        if (cell.Text.Length > 24) return null;
        if (DateText.Find(cell.Text) is { Kind: WrittenKind.Weeks, LastWeek: null } written) return written.Week;
        return isNamed && cell.Value is CellValue.Words && int.TryParse(cell.Text, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 53 ? number : null;
    }
}
