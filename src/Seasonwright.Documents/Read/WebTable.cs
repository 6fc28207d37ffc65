using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace Seasonwright.Documents.Read;

/// <summary>A table of a web page, saved or copied as HTML, as text: a line for each row, cells set apart by tabs. Nothing of the page is run or fetched.</summary>
internal static class WebTable
{
    /// <summary>Cells that one cell may be spread over, as HTML has it for columns.</summary>
    private const int WidestCell = 1000;

    public static bool Is(string text) =>
        text.AsSpan().TrimStart() is ['<', ..] && text.Contains("<table", StringComparison.OrdinalIgnoreCase);

    /// <summary>The table with the most rows; of tables inside each other the inner one. Null where none holds anything.</summary>
    public static string? Of(string html)
    {
        using var page = new HtmlParser().ParseDocument(html);
        var tables = page.QuerySelectorAll<IHtmlTableElement>("table").Where(table => table.QuerySelector("table") is null);
        var lines = tables.Select(Lines).MaxBy(rows => rows.Count(row => row.Length > 0));
        return lines is null || lines.TrueForAll(line => line.Length == 0) ? null : string.Join('\n', lines);
    }

    private static List<string> Lines(IHtmlTableElement table)
    {
        var lines = new List<string>();
        // Columns that a cell of a row above still covers, with how many rows more.
        var covered = new Dictionary<int, int>();
        foreach (var row in table.Rows.Take(SourceText.MostLines + 1))
        {
            var cells = new SortedDictionary<int, string>();
            var column = 0;
            var below = covered.Where(cover => cover.Value > 1).ToDictionary(cover => cover.Key, cover => cover.Value - 1);
            foreach (var cell in row.Cells.Take(CellTable.MostCells + 1))
            {
                while (covered.ContainsKey(column)) column++;
                cells[column] = Words(cell);
                var (wide, high) = (Math.Clamp(cell.ColumnSpan, 1, WidestCell), Math.Clamp(cell.RowSpan, 1, SourceText.MostLines));
                if (high > 1) for (var at = column; at < column + wide; at++) below[at] = high - 1;
                column += wide;
            }
            covered = below;
            lines.Add(string.Join('\t', Enumerable.Range(0, cells.Count == 0 ? 0 : Math.Min(cells.Keys.Last() + 1, CellTable.MostCells + 1)).Select(at => cells.GetValueOrDefault(at, ""))).TrimEnd('\t'));
        }
        return lines;
    }

    // Text as it is read: without scripts and styles, a break between blocks.
    private static string Words(IElement cell)
    {
        var words = new StringBuilder();
        Say(cell, words);
        var line = string.Join(' ', words.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Contains('"', StringComparison.Ordinal) ? $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : line;
    }

    private static void Say(INode node, StringBuilder words)
    {
        foreach (var part in node.ChildNodes)
        {
            if (part is IText text) words.Append(text.Data);
            else if (part is IElement { LocalName: not ("script" or "style" or "template") } element)
            {
                var isBlock = element.LocalName is "br" or "p" or "div" or "li";
                if (isBlock) words.Append(' ');
                Say(element, words);
                if (isBlock) words.Append(' ');
            }
        }
    }
}
