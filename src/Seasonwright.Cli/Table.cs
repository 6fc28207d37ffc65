using System.Globalization;

namespace Seasonwright.Cli;

/// <summary>A column of a table for people.</summary>
/// <param name="IsNumber">Numbers stand at the right edge of their column.</param>
internal sealed record Column<T>(string Heading, Func<T, string?> Cell, bool IsNumber = false);

/// <summary>Rows in columns of even width, two spaces apart, no space at the end of a line.</summary>
internal sealed class Table<T>(IReadOnlyList<Column<T>> columns)
{
    public void Write(IReadOnlyList<T> rows, TextWriter writer)
    {
        var cells = rows.Select(row => columns.Select(column => OneLine(column.Cell(row))).ToArray()).Prepend([.. columns.Select(column => column.Heading)]).ToList();
        var widths = columns.Select((_, index) => cells.Max(line => Width(line[index]))).ToArray();
        foreach (var line in cells)
            writer.WriteLine(string.Join("  ", line.Select((cell, index) => Padded(cell, widths[index], columns[index].IsNumber))).TrimEnd());
    }

    private static string Padded(string cell, int width, bool right)
    {
        var space = new string(' ', width - Width(cell));
        return right ? space + cell : cell + space;
    }

    /// <summary>Letters as people count them: an accent that stands alone in the text has no width of its own.</summary>
    private static int Width(string text) => new StringInfo(text).LengthInTextElements;

    /// <summary>A line break in a cell would break the table, and a control character could command the terminal.</summary>
    private static string OneLine(string? text) => text is null ? ""
        : string.Join(' ', new string([.. text.Select(letter => char.IsControl(letter) ? ' ' : letter)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
