using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Names;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>A sheet that is a list of matches, read as any other list; its lines are the sheet's rows.</summary>
internal sealed record ListedHere(Sheet Sheet, FixtureList List)
{
    /// <summary>A line is "Plan!13" or "Plan!G", so that no line is called so.</summary>
    public const string KeyEnd = "!list";

    /// <summary>Headings that name opponents beside dates, and no phase, block or load: the dates are those of matches and no weeks.</summary>
    public static bool IsMatchList(Sheet sheet, WeekAxis axis)
    {
        if (!axis.View.IsDown) return false;
        var roles = sheet.Cells.Where(cell => cell.Row < axis.First && cell.Value is CellValue.Words).Select(cell => RowWords.Of(Spelling.Tidy(cell.Text))).ToList();
        return roles.Contains(RowRole.Matches) && !roles.Any(role => role is RowRole.Phases or RowRole.Blocks or RowRole.Load) && Read(sheet) is { } list && list.List.Rows.Count(row => row.Club is not null) * 2 > axis.Places.Count;
    }

    /// <summary>Null where no list of one team's matches is found.</summary>
    public static ListedHere? Read(Sheet sheet)
    {
        var list = FixtureReader.Understand(SourceText.OfText(sheet.Name, SheetText.Lines(sheet)), new FixtureOptions());
        // Whatever has dates can be read as matches: a list of them names its opponents or says where most are played.
        return list.Problems.Count == 0 && list.Rows.Count > 0 && (sheet.Cells.Any(cell => cell.Value is CellValue.Words && HeadingWords.RoleOf(cell.Text) is ColumnRole.Opponent or ColumnRole.Match or ColumnRole.Home) || list.Rows.Count(row => row.Venue is not null) * 2 > list.Rows.Count)
            ? new(sheet, list) : null;
    }

    /// <summary>Whether the list has a match against an opponent within some days.</summary>
    public bool Has(string? opponent, DaySpan days) =>
        opponent is not null && List.Rows.Any(row => row.Day is { } day && days.Overlaps(new(day, row.LastDay is { } last && last > day ? last : day)) && row.Club is { } club && (Spelling.Same(club, opponent) || NameLikeness.AreAlike(club, opponent)));

    /// <param name="map">May leave the list.</param>
    public SheetRow Row(WeekGrid weeks, SheetMap map) => new(Sheet.Name + KeyEnd, Sheet.Name, Sheet.Name, map.Roles.GetValueOrDefault(Sheet.Name + KeyEnd) == RowRole.Leave ? RowRole.Leave : RowRole.Matches, ValueList<SheetEntry>.Empty, List.Rows.Where(row => row.Day is not null).Select(row => new SheetMatch(
        Sheet.Name, new(row.Line, 1), row.LastDay is { } last && last > row.Day ? new(row.Day!.Value, last) : weeks.Holds(row.Day!.Value) ? weeks.Week(weeks.NumberOf(row.Day.Value)) : DaySpan.Of(row.Day.Value),
        Spelling.Tidy(string.Join(' ', row.Opponent, row.Competition)), row.Club, row.Venue, row.LastDay is null ? row.Day : null, row.KickOff, row.Status, row.Competition, row.Importance, row.Place, row.Condition, false, true, ValueList<string>.Empty)).ToValueList());
}
