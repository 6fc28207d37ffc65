using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Builds a sheet of one kind of thing, a row each, column by column.</summary>
internal sealed class ListSheet<T>(string name, IReadOnlyList<T> things)
{
    private readonly List<(SheetColumn Column, Func<T, int, Cell> Cell)> columns = [];
    private readonly List<(string Name, int Column)> names = [];

    /// <param name="cell">A thing's cell; also told the number of its row.</param>
    /// <param name="name">What formulas call the column's cells; null where none looks into them.</param>
    public ListSheet<T> Add(string heading, double width, Func<T, int, Cell> cell, string? name = null)
    {
        if (name is not null) names.Add((name, columns.Count));
        columns.Add((new SheetColumn(heading, width), cell));
        return this;
    }

    /// <summary>A column of texts that is left out where no thing has one.</summary>
    public ListSheet<T> Perhaps(string heading, double width, Func<T, string?> text) => things.Any(thing => text(thing) is not null) ? Text(heading, width, text) : this;

    public ListSheet<T> Text(string heading, double width, Func<T, string?> text, string? name = null) => Add(heading, width, (thing, _) => new(text(thing), SheetLooks.Wrapped), name);

    public ListSheet<T> Number(string heading, double width, CellLook look, Func<T, decimal?> number) => Add(heading, width, (thing, _) => new(number(thing), look));

    public ListSheet<T> Day(string heading, CellLook look, Func<T, DateOnly?> day, string? name = null) => Add(heading, 16, (thing, _) => new(day(thing), look), name);

    /// <summary>The week of a thing of one day, by formula; the column of its day follows this one.</summary>
    /// <param name="day">Null without one.</param>
    public ListSheet<T> Week(Season season, Func<T, DateOnly?> day) => Week(season, thing => day(thing) is { } one ? DaySpan.Of(one) : null, lastColumn: "B");

    /// <summary>The week in which a thing is first met, by formula; the columns of its first and last day follow this one.</summary>
    public ListSheet<T> Week(Season season, Func<T, DaySpan> days) => Week(season, thing => days(thing), lastColumn: "C");

    private ListSheet<T> Week(Season season, Func<T, DaySpan?> days, string lastColumn) => Add(Say("workbook.week"), 8, (thing, row) =>
    {
        var (first, last, outside) = (FormattableString.Invariant($"B{row}"), FormattableString.Invariant($"{lastColumn}{row}"), Say("workbook.outside"));
        object value = days(thing) is not { } span ? "" : season.FirstWeekOf(span) is { } number ? (decimal)number : outside;
        return new(value, SheetLooks.Number with { Side = CellSide.Middle }, Formulas.WeekOf(first, last, outside));
    });

    /// <param name="above">The line that says what the sheet is for.</param>
    public Sheet Sheet(string above)
    {
        var sheet = new Sheet(name, [.. columns.Select(column => column.Column)], [new(above, SheetLooks.Quiet)],
            [.. things.Select((thing, index) => (IReadOnlyList<Cell>)[.. columns.Select(column => column.Cell(thing, Workbooks.Sheet.FirstRow + index))])]);
        return sheet with { Names = [.. names.Select(named => (named.Name, sheet.Cells(named.Column)))] };
    }
}
