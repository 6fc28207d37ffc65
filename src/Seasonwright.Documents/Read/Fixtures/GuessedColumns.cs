using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// The columns whose headings are not known: what the cells below show by themselves (days, weekdays, times, results, home and away
/// marks) is taken; where no heading says who plays, that is offered or asked.
/// </summary>
internal static class GuessedColumns
{
    private const int SearchedRows = 30, LongestHeading = 40, MostNames = 6;

    /// <summary>The first row of several cells, if it looks like headings: short words that differ, over columns of which one holds days, from the first row on.</summary>
    public static HeadingRows? Headings(CellTable table)
    {
        var row = table.Rows.Take(SearchedRows).FirstOrDefault(row => row.Filled.Skip(1).Any());
        if (row is null || !row.Filled.All(c => IsWord(c.Cell)) || row.Filled.DistinctBy(c => Spelling.Fold(c.Cell), StringComparer.Ordinal).Count() < row.Filled.Count()) return null;
        var body = table.Rows.Where(below => below.Line > row.Line && below.Filled.Skip(1).Any() && !below.Cells.SequenceEqual(row.Cells, StringComparer.Ordinal)).ToList();
        if (body.Count == 0) return null;
        var columns = Enumerable.Range(0, body.Max(below => below.Cells.Count)).ToList();
        bool Most(int column, Func<string, bool> holds) => body.Count(below => holds(below[column])) * 2 > body.Count;
        // A column without a heading, a "v" between names and a second day in each row are other kinds of list.
        var isTable = columns.TrueForAll(column => row[column].Length > 0 ? !Most(column, IsVersus) && body.TrueForAll(below => !Spelling.Same(below[column], row[column])) : !Most(column, cell => cell.Length > 0));
        // A day may be written once for the rows below.
        var hasDays = columns.Exists(column => IsDate(body[0][column]) && IsMostly(body.Select(below => below[column]).Where(cell => cell.Length > 0), IsDate));
        return isTable && hasDays && columns.Count(column => Most(column, IsDate)) <= 1 ? new(row) : null;
    }

    /// <summary>Columns with numbers for headings, for a table of matches that has none: one column holds days, and two the same names.</summary>
    public static HeadingRows? Numbered(CellTable table)
    {
        var body = table.Rows.Where(row => row.Filled.Skip(2).Any()).ToList();
        if (table.Delimiter is null || body.Count < 2) return null;
        var columns = Enumerable.Range(0, body.Max(row => row.Cells.Count)).ToList();
        var names = columns.Where(column => IsMostly(body.Select(row => row[column]), cell => cell.Any(char.IsLetter) && !IsDate(cell) && CalendarWords.Weekday(cell) is null)).ToList();
        var isTable = columns.Exists(column => IsMostly(body.Select(row => row[column]), IsDate)) && names.SelectMany((one, i) => names.Skip(i + 1).Select(other => (one, other))).Any(pair => AreSides(pair.one, pair.other, body));
        return isTable ? new(new CellRow(0, columns.Select(column => Sentences.Say("column.numbered", column + 1)).ToValueList(), "")) : null;
    }

    /// <summary>Fills in roles that neither a known heading nor an answer has given.</summary>
    /// <param name="columns">As headings and answers have them.</param>
    /// <param name="isSaid">Whether an answer says what a heading's column holds.</param>
    public static ListColumns Of(List<HeadingUse> columns, List<CellRow> body, Func<string, bool> isSaid, Asker asker)
    {
        var figures = new HashSet<int>();
        var shown = columns.Where(IsOpen).Select(column => (column.Column, Role: RoleOf([.. Cells(column.Column)]))).Where(shown => shown.Role is not null && !(shown.Role is ColumnRole.KickOff or ColumnRole.Result && HeadingWords.IsOtherTime(columns[shown.Column].Heading)) && !columns.Exists(column => column.Role == shown.Role)).ToList();
        foreach (var (i, role) in shown.Where(one => one.Role is not ColumnRole.KickOff || shown.Count(other => other.Role == one.Role) == 1).DistinctBy(one => one.Role))
        {
            // The names already say who is at home.
            if (role == ColumnRole.Venue && columns.Exists(column => column.Role is ColumnRole.Home or ColumnRole.Match)) continue;
            columns[i] = columns[i] with { Role = role };
            if (role is ColumnRole.KickOff or ColumnRole.Result) figures.Add(i);
        }
        if (HeadedList.NamesSides(columns)) return new(columns, figures, null, false);
        var names = columns.Where(column => column.Role is ColumnRole.Home or ColumnRole.Away || column.Heading.Length > 0 && IsOpen(column) && IsMostly(Cells(column.Column), cell => cell.Any(char.IsLetter))).Take(MostNames).ToList();
        if (names.Count == 0) return new(columns, figures, null, false);
        var (options, offered) = Options(names, body);
        var asked = asker.Ask("sides", string.Join(' ', columns.Select(column => Spelling.Fold(column.Heading))), [],
            options.Select(option => option.Answer), [string.Join(", ", columns.Select(column => column.Heading).Where(heading => heading.Length > 0))], offered);
        var chosen = options.Find(option => option.Answer.Id == (asked.Answer ?? offered));
        if (chosen is { One: var home, Other: { } away })
        {
            columns[home] = columns[home] with { Role = ColumnRole.Home };
            columns[away] = columns[away] with { Role = ColumnRole.Away };
        }
        else if (chosen is { One: var only })
            columns[only] = columns[only] with { Role = IsMostly(Cells(only), cell => PairText.Read(cell).Home is not null) ? ColumnRole.Match : ColumnRole.Opponent };
        return new(columns, figures, asked.IsOpen ? asked.Id : null, chosen is null);

        bool IsOpen(HeadingUse column) => column is { Role: null } && !isSaid(column.Heading);
        IEnumerable<string> Cells(int column) => body.Select(row => row[column]).Where(cell => cell.Length > 0);
    }

    private static ColumnRole? RoleOf(List<string> cells)
    {
        if (IsMostly(cells, cell => CalendarWords.Weekday(cell) is not null)) return ColumnRole.Weekday;
        if (IsMostly(cells, IsDate)) return ColumnRole.Date;
        if (AreMarks(cells)) return ColumnRole.Venue;
        // "1830" alone may be anything.
        if (!IsMostly(cells, cell => !cell.All(char.IsAsciiDigit) && (TimeText.Read(cell).Time is not null || ResultText.Read(cell) is not null || FixtureDraft.IsState(cell)))) return null;
        return cells.Exists(cell => ResultText.Read(cell) is not null && TimeText.Read(cell).Time is null) ? ColumnRole.Result : ColumnRole.KickOff;
    }

    // One word or letter for home and one for away, perhaps one for neutral: W, D and L are none.
    private static bool AreMarks(List<string> cells)
    {
        var marks = cells.Where(cell => !ListWords.IsBye(cell) && !TimeText.IsUnknown(cell)).Select(VenueText.Mark).ToList();
        return marks.Count > 0 && marks.TrueForAll(mark => mark is not null) && marks.Distinct().Count() > 1 && cells.Select(Spelling.Fold).Distinct(StringComparer.Ordinal).Count() <= 5;
    }

    // Two columns with the same names, or with one name in every row, are both sides of a match; home stands first as a rule, and so is offered.
    private static (List<SideOption> Options, string? Offered) Options(List<HeadingUse> names, List<CellRow> body)
    {
        var pairs = names.SelectMany((one, i) => names.Skip(i + 1).Select(other => IsTurned(one, other) ? (Home: other, Away: one) : (Home: one, Away: other))).ToList();
        var sides = pairs.Where(pair => AreSides(pair.Home.Column, pair.Away.Column, body)).ToList();
        var options = (sides.Count == 1 ? [sides[0], (Home: sides[0].Away, Away: sides[0].Home)] : pairs).Select(pair => Option("pair", pair.Home, pair.Away))
            .Concat(names.Select(column => Option("opponent", column, null))).ToList();
        return (options, sides.Count == 1 || names.Count == 1 ? options[0].Answer.Id : null);
    }

    // One of the two headings may be known.
    private static bool IsTurned(HeadingUse one, HeadingUse other) => one.Role == ColumnRole.Away || other.Role == ColumnRole.Home;

    private static SideOption Option(string kind, HeadingUse one, HeadingUse? other) => new(
        Asker.Option("sides", kind, one.Heading, other?.Heading) with { Id = string.Create(CultureInfo.InvariantCulture, $"{kind}-{one.Column + 1}") + (other is null ? "" : string.Create(CultureInfo.InvariantCulture, $"-{other.Column + 1}")) },
        one.Column, other?.Column);

    private static bool AreSides(int one, int other, List<CellRow> body)
    {
        var rows = body.Where(row => row[one].Length > 0 && row[other].Length > 0).Select(row => (One: Spelling.Fold(row[one]), Other: Spelling.Fold(row[other]))).ToList();
        if (rows.Count < 2 || rows.Exists(row => row.One == row.Other)) return false;
        var (ones, others) = (rows.Select(row => row.One).ToHashSet(StringComparer.Ordinal), rows.Select(row => row.Other).ToHashSet(StringComparer.Ordinal));
        var shared = ones.Where(others.Contains).ToList();
        return shared.Count * 2 > Math.Min(ones.Count, others.Count) && shared.Count >= 2 || shared.Exists(name => rows.TrueForAll(row => row.One == name || row.Other == name));
    }

    private static bool IsMostly(IEnumerable<string> cells, Func<string, bool> holds) => cells.ToList() is { Count: > 0 } all && all.Count(holds) * 2 > all.Count;

    private static bool IsDate(string cell) => DateText.Find(cell) is { Kind: not WrittenKind.Weeks } date && DateText.Without(cell, date).Length <= 12;

    private static bool IsVersus(string cell) => cell.Length <= 3 && (cell is "@" or "-" or "–" or ":" || PairText.Read($"A {cell} B") is { Home: not null });

    /// <summary>A short text as a heading has it: no day, no time, no result.</summary>
    public static bool IsWord(string cell) => cell.Length <= LongestHeading && !IsVersus(cell) && DateText.Find(cell) is null && TimeText.Read(cell).Time is null && ResultText.Read(cell) is null
        && (cell.Any(char.IsLetter) || HeadingWords.RoleOf(cell) is not null);

    /// <param name="One">The column of the team at home, or of the other team.</param>
    /// <param name="Other">The column of the team away; null where one column says it.</param>
    private sealed record SideOption(AnswerOption Answer, int One, int? Other);
}
