using System.Globalization;

namespace Seasonwright.Cli;

/// <summary>A column of a table.</summary>
/// <param name="IsNumber">For people, numbers stand at the right edge of their column.</param>
internal sealed record Column<T>(string Heading, Func<T, string?> Cell, bool IsNumber = false);

/// <summary>Rows in columns.</summary>
internal sealed class Table<T>(IReadOnlyList<Column<T>> columns)
{
    /// <summary>As CSV (RFC 4180, but lines end with LF): a heading, then a line a row.</summary>
    public void WriteCsv(IReadOnlyList<T> rows, TextWriter writer)
    {
        writer.WriteLine(string.Join(',', columns.Select(column => column.Heading)));
        foreach (var row in rows) writer.WriteLine(string.Join(',', columns.Select(column => Quoted(Disarmed(column.Cell(row) ?? "")))));
    }

    /// <summary>In columns of even width, two spaces apart, no space at the end of a line.</summary>
    public void Write(IReadOnlyList<T> rows, TextWriter writer)
    {
        var cells = rows.Select(row => columns.Select(column => OneLine.Of(column.Cell(row))).ToArray()).Prepend([.. columns.Select(column => column.Heading)]).ToList();
        var widths = columns.Select((_, index) => cells.Max(line => Width(line[index]))).ToArray();
        foreach (var line in cells)
            writer.WriteLine(string.Join("  ", line.Select((cell, index) => Padded(cell, widths[index], columns[index].IsNumber))).TrimEnd());
    }

    private static string Padded(string cell, int width, bool right)
    {
        var space = new string(' ', width - Width(cell));
        return right ? space + cell : cell + space;
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(",\"\r\n") ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    /// <summary>
    /// What a spreadsheet would run as a formula stands behind an apostrophe, so that it shows it as text: the words of a list are
    /// somebody else's. A plain number ("-5") stays a number.
    /// </summary>
    private static string Disarmed(string cell) =>
        cell is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..] && !IsPlainNumber(cell) ? $"'{cell}" : cell;

    private static bool IsPlainNumber(string cell) =>
        decimal.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);

    /// <summary>Letters as people count them: an accent that stands alone in the text has no width of its own.</summary>
    private static int Width(string text) => new StringInfo(text).LengthInTextElements;
}
