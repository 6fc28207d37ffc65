using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>A calendar on one sheet: a column for each month, a row for each day of a month.</summary>
/// <param name="HeadingRow">The row of the months.</param>
/// <param name="Places">The day of each cell that is one.</param>
internal sealed record DayGrid(Sheet Sheet, int HeadingRow, int DayColumn, IReadOnlyDictionary<CellAt, DateOnly> Places)
{
    public DaySpan Days => new(Places.Values.Min(), Places.Values.Max());

    /// <summary>A row of at least three months in order over a column that counts from 1 to 28 at least; null when there is none.</summary>
    public static DayGrid? Find(Sheet sheet)
    {
        if (DayNumbers(sheet) is not var (column, days) || days.Count < 28) return null;
        var years = sheet.Cells.Where(cell => cell.Value is CellValue.Words && cell.Row <= 10).Select(cell => SeasonYears.Find(cell.Text)).OfType<SeasonYears>().ToList();
        foreach (var row in sheet.Cells.Where(cell => cell.Row < days.Values.Min()).GroupBy(cell => cell.Row).OrderByDescending(row => row.Key))
        {
            var months = Months([.. row], years);
            if (months.Count < 3) continue;
            var places = new Dictionary<CellAt, DateOnly>();
            foreach (var (at, month) in months)
                foreach (var (day, line) in days.Where(day => day.Key <= DateTime.DaysInMonth(month.Year, month.Month))) places[new(line, at)] = new(month.Year, month.Month, day);
            return new(sheet, row.Key, column, places);
        }
        return null;
    }

    public bool IsPart(CellAt at) => Places.ContainsKey(at) || at.Row == HeadingRow || at.Column == DayColumn && Places.Keys.Any(place => place.Row == at.Row);

    /// <summary>What stands on each day, without the letters of the weekdays; and the runs of colour that a legend names.</summary>
    public (List<SheetEntry> Days, List<SheetEntry> Periods) Rows(Legend legend)
    {
        var cells = Places.Select(place => (Day: place.Value, At: place.Key, Cell: Sheet[place.Key])).OrderBy(place => place.Day).ToList();
        var letters = cells.Where(cell => cell.Cell is { Value: CellValue.Words }).GroupBy(cell => cell.Day.DayOfWeek)
            .ToDictionary(weekday => weekday.Key, weekday => Most([.. weekday.Select(cell => First(cell.Cell!.Text))]));
        List<SheetEntry> days = [], periods = [];
        foreach (var (day, at, cell) in cells)
        {
            if (cell is null) continue;
            var text = Spelling.Tidy(cell.Text);
            if (letters.GetValueOrDefault(day.DayOfWeek) is { } letter && (text == letter || text.StartsWith(letter + " ", StringComparison.Ordinal))) text = text[letter.Length..].TrimStart();
            if (text.Length > 0 && cell.Value is not CellValue.Error) days.Add(new(at, DaySpan.Of(day), text, cell.Value is CellValue.Number number ? number.Amount : null, cell.Fill));
            if (cell.Fill is not { } fill || legend.Of(fill) is not { } name) continue;
            if (periods.Count > 0 && periods[^1].Fill == fill && periods[^1].Days.Last == day.AddDays(-1)) periods[^1] = periods[^1] with { Days = new(periods[^1].Days.First, day) };
            else periods.Add(new(at, DaySpan.Of(day), name, null, fill));
        }
        return (days, periods);
    }

    /// <summary>One cell holds whatever the day brings: matches, test days and everything else are rows of their own.</summary>
    public static IEnumerable<DraftRow> Split(Sheet sheet, List<SheetEntry> days, Legend legend)
    {
        // What is not sure to be a match stays the coach's own.
        var byRole = days.ToLookup(entry => RowWords.Of(entry.Text) == RowRole.Tests ? RowRole.Tests
            : MatchCell.Read(entry.Text, entry.Days, legend) is { } match && (match.Venue is not null || match.Competition is not null || match.Round is not null || match.IsFriendly) ? RowRole.Matches : RowRole.Own);
        foreach (var (role, name) in new[] { (RowRole.Matches, "matches"), (RowRole.Tests, "tests"), (RowRole.Own, "notes") })
            if (byRole[role].Any()) yield return new($"{sheet.Name}!{name}", sheet.Name, Sentences.Say($"sheet.days.{name}"), role, [.. byRole[role]]);
    }

    // The column that counts 1, 2, 3 ... with the row of each number.
    private static (int Column, Dictionary<int, int> Rows)? DayNumbers(Sheet sheet)
    {
        foreach (var column in sheet.Cells.Where(cell => cell.Value is CellValue.Number or CellValue.Words).GroupBy(cell => cell.Column))
        {
            var (rows, next) = (new Dictionary<int, int>(), 1);
            foreach (var cell in column)
            {
                if (!int.TryParse(Spelling.Tidy(cell.Text).TrimEnd('.'), System.Globalization.CultureInfo.InvariantCulture, out var day) || day < next || day > Math.Min(31, next + 3)) continue;
                // A number that is missing has its row all the same, where the rows leave room for it.
                for (; next < day && rows.TryGetValue(next - 1, out var before) && cell.Row - before == day - next + 1; next++) rows[next] = before + 1;
                rows[day] = cell.Row;
                next = day + 1;
            }
            if (rows.Count >= 28) return (column.Key, rows);
        }
        return null;
    }

    private static List<(int Column, DateOnly Month)> Months(List<SheetCell> row, List<SeasonYears> years)
    {
        var months = new List<(int Column, DateOnly Month)>();
        foreach (var cell in row)
        {
            DateOnly? month = cell.Value is CellValue.Day { Date: var date } ? new(date.Year, date.Month, 1)
                : cell.Value is CellValue.Words && DateText.Find(cell.Text, months: true) is { Kind: WrittenKind.Month } written
                    ? (written.First.Year ?? (months.Count > 0 ? months[^1].Month.AddMonths(1).Year : years.Count > 0 ? years[0].First : null)) is { } year ? new(year, written.First.Second, 1) : null
                : null;
            if (month is not { } found || !DateColumn.IsPossible(found)) continue;
            if (months.Count > 0)
            {
                // A heading that is missing or no date has the month that its column leaves room for.
                for (var (at, last) = months[^1]; at + 1 < cell.Column && cell.Column - at == (found.Year - last.Year) * 12 + found.Month - last.Month; (at, last) = months[^1]) months.Add((at + 1, last.AddMonths(1)));
                if (found != months[^1].Month.AddMonths(1)) return [];
            }
            months.Add((cell.Column, found));
        }
        return months;
    }

    // The first word of most cells of a weekday, where nearly all begin with it and it is short.
    private static string? Most(List<string> firsts)
    {
        var most = firsts.GroupBy(word => word, StringComparer.Ordinal).MaxBy(group => group.Count())!;
        return most.Key.Length is >= 1 and <= 3 && most.Count() * 5 >= firsts.Count * 4 ? most.Key : null;
    }

    private static string First(string text) => Spelling.Tidy(text).Split(' ')[0];
}
