using Seasonwright.Core;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Lists with a row of headings.</summary>
internal static class HeadedList
{
    private const int SearchedRows = 30;

    /// <summary>The row of headings, or two of them, or null: at least two columns are known by name, one of them says who plays.</summary>
    public static HeadingRows? Headings(CellTable table) => Candidates([.. table.Rows.Where(row => !row.IsBlank).Take(SearchedRows)])
        .Select(rows => (rows, roles: rows.Row.Filled.Select(c => HeadingWords.RoleOf(c.Cell)).ToList()))
        .Where(found => found.roles.OfType<ColumnRole>().Distinct().Count() >= 2 && found.roles.Count(role => role is not null) * 2 >= found.roles.Count
            && found.roles.Any(role => role is ColumnRole.Home or ColumnRole.Away or ColumnRole.Opponent or ColumnRole.Match or ColumnRole.Team))
        .OrderByDescending(found => found.roles.OfType<ColumnRole>().Distinct().Count()).ThenByDescending(found => found.roles.OfType<ColumnRole>().Count()).Select(found => found.rows).FirstOrDefault();

    // One row goes before two that say no more.
    private static IEnumerable<HeadingRows> Candidates(List<CellRow> rows) =>
        rows.Select(row => new HeadingRows(row)).Concat(rows.Zip(rows.Skip(1), HeadingRows.Both).OfType<HeadingRows>());

    /// <summary>Whether headings can only be a fixture list's: both sides of a match, or an opponent.</summary>
    public static bool NamesOpponents(CellRow headings) => NameOpponents([.. headings.Filled.Select(cell => HeadingWords.RoleOf(cell.Cell))]);

    /// <summary>Whether the columns say who plays: as <see cref="NamesOpponents"/>, or both in one.</summary>
    public static bool NamesSides(IEnumerable<HeadingUse> columns) => columns.Select(column => column.Role).ToList() is var roles && (roles.Contains(ColumnRole.Match) || NameOpponents(roles));

    private static bool NameOpponents(List<ColumnRole?> roles) => roles.Contains(ColumnRole.Opponent) || roles.Contains(ColumnRole.Home) && roles.Contains(ColumnRole.Away);

    public static ListLayout Read(CellTable table, HeadingRows rows, Answers answers, Asker asker)
    {
        var headings = rows.Row;
        var body = table.Rows.Where(row => row.Line > headings.Line).ToList();
        var columns = Columns(headings, [.. body.Where(row => !rows.Is(row))], answers);
        var read = GuessedColumns.Of(columns, body, heading => Said(heading, answers) is not null, asker);
        var (matches, skipped, sections) = (new List<ListedMatch>(), new List<Skipped>(), new Sections());
        foreach (var row in table.Rows.Where(row => row.Line < headings.Line))
            skipped.Add(row.IsBlank ? Skipped.Of(row.Line, row.Raw, "blank") : rows.Is(row) ? Skipped.Of(row.Line, row.Raw, "headings") : Skipped.Of(row.Line, row.Raw, sections.Take(string.Join(' ', row.Filled.Select(c => c.Cell)), isTitle: true)));
        if (headings.Line > 0) skipped.Add(Skipped.Of(headings.Line, headings.Raw, "headings"));
        for (var i = 0; i < body.Count; i++)
        {
            var row = body[i];
            var filled = row.Filled.ToList();
            if (filled.Count == 0) skipped.Add(Skipped.Of(row.Line, row.Raw, "blank"));
            else if (rows.Is(row)) skipped.Add(Skipped.Of(row.Line, row.Raw, "headings"));
            else if (filled.Take(2).Any(c => ListWords.IsTotal(c.Cell))) skipped.Add(Skipped.Of(row.Line, row.Raw, "totals"));
            else if (IsDayHeading(filled, body.Skip(i + 1).FirstOrDefault(below => !below.IsBlank), columns)) skipped.Add(Skipped.Of(row.Line, row.Raw, sections.Take(string.Join(' ', filled.Select(c => c.Cell)), isTitle: false)));
            else if (filled.Count == 1 && columns.Count > 1 && !IsOpponentAlone(filled[0].Column, columns)) skipped.Add(Skipped.Of(row.Line, row.Raw, sections.Take(filled[0].Cell, isTitle: false)));
            else if (read.Waits) skipped.Add(Skipped.Of(row.Line, row.Raw, "waits"));
            else matches.Add(Match(row, read, sections));
        }
        var problems = new List<Problem>();
        if (!read.Waits && !NamesSides(columns))
            problems.Add(Problem.Of("no-opponents", table.Name, headings.Line, null, string.Join(", ", headings.Cells)));
        return new(Figures.Decide(Sections.WithSquads(matches)), skipped, columns.ToValueList(), headings.Line > 0 ? headings.Line : null, sections.Years, problems, read.Ask);
    }

    // "Saturday;5.9.2026;;" above rows without a date of their own.
    private static bool IsDayHeading(List<(int Column, string Cell)> filled, CellRow? below, List<HeadingUse> columns)
    {
        var dates = columns.Where(column => column.Role is ColumnRole.Date or ColumnRole.Weekday).Select(column => column.Column).ToList();
        return below is not null && filled.TrueForAll(c => dates.Contains(c.Column)) && filled.Exists(c => DateText.Find(c.Cell) is not null) && dates.TrueForAll(column => below[column].Length == 0);
    }

    // Below an empty date cell: a match, not a heading, which stands in the first column.
    private static bool IsOpponentAlone(int column, List<HeadingUse> columns) => column > 0 && columns.Exists(use => use.Column == column && use.Role is ColumnRole.Opponent or ColumnRole.Match);

    private static ListedMatch Match(CellRow row, ListColumns read, Sections sections)
    {
        var columns = read.Uses;
        var figures = read.Figures.Where(column => FigureCell.Is(row[column])).Select(column => new FigureCell(new(column), row[column])).ToArray();
        string Cell(ColumnRole role) => columns.Where(column => column.Role == role && !figures.Any(figure => figure.Place.At == column.Column)).Select(column => row[column.Column]).FirstOrDefault(cell => cell.Length > 0) ?? "";
        return new ListedMatch(row.Line, row.Raw)
        {
            SourceId = Cell(ColumnRole.SourceId),
            Date = Cell(ColumnRole.Date),
            Weekday = Cell(ColumnRole.Weekday),
            KickOff = Cell(ColumnRole.KickOff),
            Home = Cell(ColumnRole.Home),
            Away = Cell(ColumnRole.Away),
            Opponent = Cell(ColumnRole.Opponent),
            Pair = Cell(ColumnRole.Match),
            Venues = [.. columns.Where(column => column.Role == ColumnRole.Venue).Select(column => IsTick(row[column.Column]) ? column.Heading : row[column.Column])],
            Competition = Cell(ColumnRole.Competition),
            Round = Cell(ColumnRole.Round) is { Length: > 0 } round ? round : sections.Round,
            // "Postponed" counts wherever it stands.
            Status = Cell(ColumnRole.Status) is { Length: > 0 } status ? status : columns.Where(column => column.Role is null).Select(column => row[column.Column]).FirstOrDefault(cell => FixtureDraft.IsState(cell) || ListWords.IsBye(cell)) ?? "",
            // One column for each team's goals, or one for both.
            Result = columns.Where(column => column.Role == ColumnRole.Result).Select(column => row[column.Column]).ToList() is [var first, var second] && IsGoals(first) && IsGoals(second) ? $"{first}:{second}" : Cell(ColumnRole.Result),
            Figures = figures,
            Remarks = string.Join("; ", columns.Where(column => column.Role == ColumnRole.Remarks).Select(column => row[column.Column]).Where(cell => cell.Length > 0)),
            Team = Cell(ColumnRole.Team),
            Squad = sections.Squad,
            SectionDate = sections.Date,
            Section = sections.Text,
        };
    }

    private static List<HeadingUse> Columns(CellRow headings, List<CellRow> body, Answers answers)
    {
        var columns = headings.Cells.Select((heading, column) => new HeadingUse(column, heading, Said(heading, answers) is { } said ? said.Role : HeadingWords.RoleOf(heading))).ToList();
        for (var i = 0; i < columns.Count; i++)
        {
            var column = columns[i];
            if (Said(column.Heading, answers) is not null) continue;
            var cells = body.Select(row => row[column.Column]).Where(cell => cell.Length > 0).ToList();
            columns[i] = column with { Role = ByCells(column, cells, columns) };
        }
        OnlyOne(columns, body, ColumnRole.Date, cell => DateText.Find(cell) is { Kind: not WrittenKind.Weeks });
        OnlyOne(columns, body, ColumnRole.KickOff, cell => TimeText.Read(cell).Time is not null);
        if (!TakeGoals(columns, body)) OnlyOne(columns, body, ColumnRole.Result, cell => ResultText.Read(cell) is not null);
        // A list of one team may call the other one "Team".
        if (!columns.Any(column => column.Role is ColumnRole.Opponent or ColumnRole.Match or ColumnRole.Home or ColumnRole.Away) && columns.FindIndex(column => column.Role == ColumnRole.Team) is >= 0 and var team)
            columns[team] = columns[team] with { Role = ColumnRole.Opponent };
        return columns;
    }

    // Headings that name different things in different lists are told apart by the cells below.
    private static ColumnRole? ByCells(HeadingUse column, List<string> cells, List<HeadingUse> columns)
    {
        bool Most(Func<string, bool> holds) => cells.Count > 0 && cells.Count(holds) * 2 > cells.Count;
        switch (column.Role)
        {
            case ColumnRole.Date when Most(cell => CalendarWords.Weekday(cell) is not null):
                return ColumnRole.Weekday;
            case ColumnRole.Date when Most(cell => DateText.Find(cell, months: true) is null && !TimeText.IsUnknown(cell)):
                // "Week" with bare numbers is a round of the league.
                return Most(cell => cell.All(char.IsAsciiDigit)) && !columns.Any(other => other.Role == ColumnRole.Round) ? ColumnRole.Round : columns.Count(other => other.Role == ColumnRole.Date) > 1 ? null : ColumnRole.Date;
            case ColumnRole.KickOff when Most(cell => DateText.Find(cell) is not null):
                return ColumnRole.Date;
            case ColumnRole.Match when Most(cell => cell.All(char.IsAsciiDigit)):
                return columns.Any(other => other.Role == ColumnRole.SourceId) ? null : ColumnRole.SourceId;
            case ColumnRole.SourceId when HeadingWords.IsBareNumber(column.Heading) && !columns.Any(other => other.Role == ColumnRole.Round):
                // A list that counts its rows from 1 counts rounds; anything else is the list's own number.
                return cells.Count > 0 && cells[0] == "1" ? ColumnRole.Round : ColumnRole.SourceId;
            case ColumnRole.Home or ColumnRole.Away when Most(cell => IsTick(cell) || VenueText.Mark(cell) is not null):
                return ColumnRole.Venue;
            default:
                return column.Role;
        }
    }

    // Of several columns for one thing the one with most readable cells is read.
    private static void OnlyOne(List<HeadingUse> columns, List<CellRow> body, ColumnRole role, Func<string, bool> reads)
    {
        var best = columns.Where(column => column.Role == role).OrderByDescending(column => body.Count(row => reads(row[column.Column]))).FirstOrDefault();
        for (var i = 0; i < columns.Count; i++)
            if (columns[i].Role == role && columns[i] != best) columns[i] = columns[i] with { Role = null };
    }

    // A cross below "Home" or "Away".
    private static bool IsTick(string cell) => cell is "x" or "X" or "✓" or "✔" or "✗" or "•" or "●";

    // Two columns of whole numbers, filled in the same rows: the goals of the two teams.
    private static bool TakeGoals(List<HeadingUse> columns, List<CellRow> body)
    {
        var rows = body.Where(row => row.Filled.Skip(1).Any()).ToList();
        bool AreGoals(HeadingUse column) => rows.Exists(row => IsGoals(row[column.Column])) && rows.TrueForAll(row => row[column.Column].Length == 0 || IsGoals(row[column.Column]));
        var goals = columns.Where(column => (column.Role == ColumnRole.Result || column.Role is null && column.Heading.Length <= 2) && AreGoals(column)).ToList();
        if (goals.Count != 2 || !rows.TrueForAll(row => (row[goals[0].Column].Length > 0) == (row[goals[1].Column].Length > 0)) || columns.Exists(column => column.Role == ColumnRole.Result && !goals.Contains(column))) return false;
        foreach (var goal in goals) columns[goal.Column] = goal with { Role = ColumnRole.Result };
        return true;
    }

    private static bool IsGoals(string cell) => cell.Length is > 0 and <= 3 && cell.All(char.IsAsciiDigit);

    // An answer may also say that a column is not to be read.
    private static SaidRole? Said(string heading, Answers answers) => answers.Find(HeadingUse.KeyOf(heading), "") switch
    {
        { } said when Spelling.Same(said, HeadingUse.Unread) => new(null),
        { } said when Enum.TryParse<ColumnRole>(said, ignoreCase: true, out var role) => new(role),
        _ => null,
    };

    private sealed record SaidRole(ColumnRole? Role);
}
