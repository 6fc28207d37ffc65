using System.Globalization;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Writes one sheet as the file has it.</summary>
internal sealed class SheetPart(Sheet sheet, string heading, string edition, LocaleSettings locale, CellStyles styles, SharedTexts texts)
{
    // A heading written upwards needs room for its longest word.
    private const double UprightHeight = 96;

    public Worksheet Write()
    {
        var written = new Worksheet(
            new SheetProperties(new PageSetupProperties { FitToPage = true }),
            new SheetDimension { Reference = FormattableString.Invariant($"A1:{Workbooks.Sheet.Letters(sheet.Columns.Count - 1)}{sheet.LastRow}") },
            new SheetViews(View()),
            new SheetFormatProperties { DefaultRowHeight = 13.5 },
            new Columns(sheet.Columns.Select((column, at) => new Column { Min = (uint)at + 1, Max = (uint)at + 1, Width = column.Width, CustomWidth = true })),
            new SheetData(Rows()));
        if (sheet.Merged is { } merged) written.Append(new MergeCells(new MergeCell { Reference = merged }) { Count = 1 });
        foreach (var (emphasised, at) in (sheet.Emphasised ?? []).Select((emphasised, at) => (emphasised, at))) written.Append(Emphasis(emphasised, at + 1));
        if (sheet.Names?.Any(named => named.Name == Formulas.FirstDay) == true) written.Append(OnlyDays(sheet.Names.First(named => named.Name == Formulas.FirstDay).Cells));
        written.Append(
            new PrintOptions { HorizontalCentered = false },
            new PageMargins { Left = 0.4, Right = 0.4, Top = 0.7, Bottom = 0.6, Header = 0.3, Footer = 0.3 },
            new PageSetup { PaperSize = locale.Paper == Paper.Letter ? 1u : 9u, Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 },
            new HeaderFooter(new OddHeader(HeaderText(heading, edition)), new OddFooter($"&L{Plain(sheet.Name, 120)}&R&P / &N")));
        return written;
    }

    private SheetView View()
    {
        var frozen = FormattableString.Invariant($"{Workbooks.Sheet.Letters(sheet.Frozen)}{Workbooks.Sheet.FirstRow}");
        var pane = new Pane { VerticalSplit = Workbooks.Sheet.HeadingRow, TopLeftCell = frozen, ActivePane = sheet.Frozen > 0 ? PaneValues.BottomRight : PaneValues.BottomLeft, State = PaneStateValues.Frozen };
        if (sheet.Frozen > 0) pane.HorizontalSplit = sheet.Frozen;
        return new SheetView(pane) { WorkbookViewId = 0, ShowGridLines = false };
    }

    private IEnumerable<Row> Rows()
    {
        yield return Row(1, [new(HandOutTexts.Say("workbook.title", heading, sheet.Name), SheetLooks.Title)], 20);
        yield return Row(2, [new(edition, SheetLooks.Quiet)]);
        yield return Row(3, sheet.Above, 16);
        yield return Row(Workbooks.Sheet.HeadingRow, [.. sheet.Columns.Select(column => new Cell(column.Heading, column.IsUpright ? SheetLooks.Upright : SheetLooks.Heading))],
            sheet.Columns.Any(column => column.IsUpright) ? UprightHeight : 28);
        foreach (var (row, at) in sheet.Rows.Select((row, at) => (row, at))) yield return Row(Workbooks.Sheet.FirstRow + at, row, RoomFor(row), isFixed: false);
    }

    /// <summary>So high that every text shows all its lines; a spreadsheet that reckons itself may change it.</summary>
    private double RoomFor(IReadOnlyList<Cell> row) => 2 + 12.5 * row.Select((cell, at) => cell is { Look.Wraps: true, Value: string text } ? Lines(text, sheet.Columns[at].Width) : 1).DefaultIfEmpty(1).Max();

    private static int Lines(string text, double width)
    {
        // A digit's width at this size, in px at 96 to the inch.
        const double Digit = 7;
        // Arial runs narrower than the house's letters.
        var style = new TextStyle(10 * 96.0 / 72 * 0.93);
        var (lines, filled, room, space) = (1, 0.0, width * Digit - 3, TextWidths.Of(" ", style));
        foreach (var word in text.Split(' '))
        {
            var wide = TextWidths.Of(word, style);
            if (filled > 0 && filled + space + wide > room) (lines, filled) = (lines + 1, 0);
            // A word longer than a line is broken.
            lines += (int)Math.Max(0, Math.Ceiling(wide / room) - 1);
            filled += (filled > 0 ? space : 0) + wide % room;
        }
        return Math.Min(lines, 30);
    }

    private Row Row(int number, IReadOnlyList<Cell> cells, double? height = null, bool isFixed = true)
    {
        var row = new Row(cells.Select((cell, at) => Written(cell, FormattableString.Invariant($"{Workbooks.Sheet.Letters(at)}{number}")))) { RowIndex = (uint)number };
        if (height is { } points) row.Height = points;
        if (height is not null && isFixed) row.CustomHeight = true;
        return row;
    }

    private DocumentFormat.OpenXml.Spreadsheet.Cell Written(Cell cell, string place)
    {
        var written = new DocumentFormat.OpenXml.Spreadsheet.Cell { CellReference = place };
        if (cell.Formula is { } formula) written.Append(new CellFormula(formula));
        var number = cell.Value switch
        {
            decimal value => value.ToString(CultureInfo.InvariantCulture),
            DateOnly day => SerialDay.Of(day)?.ToString(CultureInfo.InvariantCulture),
            TimeOnly time => (time.Ticks / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute / (double)TimeSpan.TicksPerDay).ToString("R", CultureInfo.InvariantCulture),
            _ => null,
        };
        var text = number is not null ? null : cell.Value switch
        {
            null => null,
            DateOnly day => day.Iso(),
            // What a formula gives is put together from clean texts, and stays as it gives it.
            var value => cell.Formula is null ? SheetText.Of((string)value) : SheetText.Escaped((string)value),
        };
        if (number is not null) written.Append(new CellValue(number));
        else if (text is not null && cell.Formula is not null)
        {
            written.DataType = CellValues.String;
            written.Append(new CellValue(text) { Space = SpaceProcessingModeValues.Preserve });
        }
        else if (text is { Length: > 0 })
        {
            written.DataType = CellValues.SharedString;
            written.Append(new CellValue(texts.Of(text).ToString(CultureInfo.InvariantCulture)));
        }
        written.StyleIndex = styles.Of(cell.Look, text is not null && cell.Formula is null && SheetText.IsLikeFormula(text));
        return written;
    }

    private ConditionalFormatting Emphasis(Emphasised look, int priority) =>
        new(new ConditionalFormattingRule(new Formula(look.When)) { Type = ConditionalFormatValues.Expression, FormatId = styles.Of(look), Priority = priority })
        { SequenceOfReferences = new ListValue<StringValue> { InnerText = look.Cells } };

    /// <summary>The first day takes a day and nothing else.</summary>
    private static DataValidations OnlyDays(string cell) => new(new DataValidation(new Formula1("61"))
    {
        Type = DataValidationValues.Date,
        Operator = DataValidationOperatorValues.GreaterThanOrEqual,
        ShowErrorMessage = true,
        Error = HandOutTexts.Say("workbook.first-day.wrong"),
        SequenceOfReferences = new ListValue<StringValue> { InnerText = cell[(cell.IndexOf('!', StringComparison.Ordinal) + 1)..].Replace("$", "", StringComparison.Ordinal) },
    })
    { Count = 1 };

    /// <summary>Left whose it is, right which state; 255 letters are the most that a header holds.</summary>
    private static string HeaderText(string heading, string edition) => $"&L{Plain(heading, 120)}&R{Plain(edition, 120)}";

    /// <summary>A sign that commands in a header is doubled to be shown; what is cut is cut between signs.</summary>
    private static string Plain(string text, int most)
    {
        var plain = new StringBuilder();
        foreach (var sign in text.EnumerateRunes())
        {
            var shown = sign.Value == '&' ? "&&" : sign.ToString();
            if (plain.Length + shown.Length > most) break;
            plain.Append(shown);
        }
        return plain.ToString();
    }
}
