using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Calendars;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Squads;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read;

/// <summary>What a list is of.</summary>
internal enum ListKind
{
    /// <summary>Nothing tells it clearly: whoever was asked to read it tries.</summary>
    Unclear,
    Fixtures,
    Events,
    Squad,

    /// <summary>A plan, week by week.</summary>
    Year,

    /// <summary>Matches and other dates, of which each reader takes its own.</summary>
    Calendar,
}

/// <summary>Tells the kind of a list, so that a reader of another kind can say where it belongs. It is strict: a list that may be of two kinds is unclear.</summary>
internal static class ListKinds
{
    private const int FewestRows = 2, FewestMatches = 3, FewestWeekdays = 5;

    /// <summary>Days that a row of dates covers in a plan of a year; eight weeks.</summary>
    private const int FewestDays = 56;

    // What a plan counts from where it names no year: only its form is looked at.
    private static readonly SeasonYears AnySeason = new(2026, true);

    private static readonly DateOnly AnyDay = new(2026, 8, 31);

    /// <summary>The kind that a list shows by its headings and rows.</summary>
    public static ListKind Of(SourceText source)
    {
        if (source.Problems.Count > 0) return ListKind.Unclear;
        if (CalendarFile.Is(source)) return ListKind.Calendar;
        if (EventReader.IsProgramText(source) || CellTable.Read(source) is not { Problems.Count: 0 } table) return ListKind.Unclear;
        if (IsYear(table)) return ListKind.Year;
        if (IsHeadedFixtures(table)) return ListKind.Fixtures;
        if (AreEvents(source)) return ListKind.Events;
        if (SquadReader.Is(source)) return AreDated(table) ? ListKind.Unclear : ListKind.Squad;
        return AreMatches(table) ? ListKind.Fixtures : ListKind.Unclear;
    }

    /// <summary>Where a list belongs that is clearly of another kind than the one read; null where it is not.</summary>
    public static Problem? Elsewhere(SourceText source, params ReadOnlySpan<ListKind> read) => Of(source) is not ListKind.Unclear and var kind && !read.Contains(kind)
        ? Problem.Of(kind switch
        {
            ListKind.Fixtures => "fixtures-here",
            ListKind.Events => "events-here",
            ListKind.Squad => "squad-here",
            ListKind.Year => "year-here",
            _ => "calendar-here",
        }, source.Name, kind == ListKind.Fixtures ? HeadedList.Headings(CellTable.Read(source))?.Row.Line : null, null) : null;

    // Headings that name who plays, where none is an event's.
    private static bool IsHeadedFixtures(CellTable table) => HeadedList.Headings(table) is { } found && !found.Row.Filled.Any(c => EventColumns.IsTitle(c.Cell))
        && (HeadedList.NamesOpponents(found.Row) || new[] { ColumnRole.Match, ColumnRole.Date }.All(role => found.Row.Filled.Any(c => HeadingWords.RoleOf(c.Cell) == role)));

    // Lines that are mostly matches between two sides, below rounds and days, with hardly a break or journey between.
    private static bool AreMatches(CellTable table)
    {
        var list = LooseList.Read(table);
        var matches = list.Matches.Where(match => match.ByeOf.Length == 0).ToList();
        var events = matches.Select(match => match.Raw).Concat(list.Skipped.Select(line => line.Text)).Count(text => EventWords.Of(text) is (not EventKind.Other, _) or (_, true));
        return matches.Count >= FewestMatches && matches.Count >= list.Skipped.Count(line => line.Kind is "remark" or "title") && matches.Count >= events * 3;
    }

    // At least half of what has days is called what breaks, exams, camps, journeys and closed rooms are called.
    private static bool AreEvents(SourceText source)
    {
        var list = EventReader.Understand(source, new EventReading());
        var named = list.Rows.Count(row => row.Kind is not (EventKind.Other or EventKind.Tournament)) + list.TestDays.Count;
        return named >= FewestRows && named * 2 >= list.Rows.Count + list.TestDays.Count && (named * 3 >= source.Lines.Count(line => !string.IsNullOrWhiteSpace(line)));
    }

    // Columns that say from when to when: people have none.
    private static bool AreDated(CellTable table) => EventColumns.Of(table) is { Heading: { } heading } columns && table.Rows[heading].Filled.Any(c => EventColumns.SaysDays(c.Cell)) && columns.HasDays;

    // Weeks across, a calendar of months, or weeks down under headings of a plan.
    private static bool IsYear(CellTable table)
    {
        if (table.Delimiter is null || table.Rows.Sum(row => row.Cells.Count) > SheetReader.MostCells) return false;
        var sheet = new Sheet(table.Name, false, table.Rows.SelectMany(row => row.Filled.Select(c => Cell(new(row.Line, c.Column + 1), c.Cell))), [], [], [], default);
        if (DayGrid.Find(sheet) is not null) return true;
        if (WeekAxis.Find(sheet, [AnySeason], new Asker(Answers.None.With("Q-first-day", AnyDay.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)))) is not [var axis, ..]) return false;
        if (!axis.View.IsDown) return axis.Days.Length >= FewestDays;
        var headings = sheet.Cells.Where(cell => cell.Row < axis.First && cell.Value is CellValue.Words).Select(cell => Spelling.Tidy(cell.Text)).ToList();
        var roles = headings.Select(RowWords.Of).OfType<RowRole>().Where(role => role != RowRole.Matches).ToHashSet();
        return roles.Count > 1 && (roles.Contains(RowRole.Load) || roles.Contains(RowRole.Blocks))
            || roles.Contains(RowRole.Load) && !IsHeadedFixtures(table) && !headings.Exists(EventColumns.IsTitle)
            || headings.Select(CalendarWords.Weekday).OfType<DayOfWeek>().Distinct().Count() >= FewestWeekdays;
    }

    private static SheetCell Cell(CellAt at, string text) => new(at, Value(text), text, null, null, "");

    private static CellValue Value(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? new CellValue.Day(day, null)
        : double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? new CellValue.Number(number) : new CellValue.Words(text);
}
