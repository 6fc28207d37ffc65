using System.Globalization;
using System.Text;
using AngleSharp.Html;
using AngleSharp.Html.Parser;
using AngleSharp.Html.Parser.Tokens;
using AngleSharp.Text;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read;

/// <summary>
/// The list on a web page, saved or copied as HTML, as text: a line for each row, cells set apart by tabs, and what is written just above
/// a table as lines of their own. Only tags are read and no page is built, so that nothing of it is run or fetched and no nesting costs more than its characters.
/// </summary>
internal static class WebTable
{
    /// <summary>A page has a dozen.</summary>
    private const int MostTables = 1_000;

    /// <summary>What stands further up, and what is longer, is not about the table.</summary>
    private const int MostHeadings = 3, LongestHeading = 100;

    /// <summary>A longer cell is prose, not a day.</summary>
    private const int LongestDay = 60;

    public static bool Is(string text) =>
        text.AsSpan().TrimStart(" \t\r\n\uFEFF") is ['<', ..] && text.Contains("<table", StringComparison.OrdinalIgnoreCase);

    /// <summary>
    /// A list may be cut into several tables, one for each round or month: those that are headed alike, or have no headings and are equally wide, are
    /// one. Of several lists the one with the most days. Of tables inside each other only the inner one. Null where no table holds anything.
    /// </summary>
    public static string? Of(string html)
    {
        var list = Tables(html).GroupBy(table => table.Kind, StringComparer.Ordinal)
            .MaxBy(tables => (tables.Sum(table => table.Days), tables.Sum(table => table.Lines.Count)));
        return list is null ? null : string.Join('\n', list.SelectMany(table => table.Headings.Concat(table.Lines)));
    }

    private static List<Table> Tables(string html)
    {
        using var source = new TextSource(html);
        var tags = new HtmlTokenizer(source, HtmlEntityProvider.Resolver) { SkipComments = true };
        var (found, open, count) = (new List<Table>(), new Stack<Table>(), 0);
        var (above, words) = (new List<string>(), new StringBuilder());
        for (var token = tags.Get(); token.Type != HtmlTokenType.EndOfFile; token = tags.Get())
        {
            var cell = open.TryPeek(out var table) ? table.Cell : null;
            if (token.Type == HtmlTokenType.Character) (cell ?? words).Append(token.Data);
            if (token is not HtmlTagToken tag) continue;
            var isStart = tag.Type == HtmlTokenType.StartTag;
            if (cell is null && !IsInline(tag.Name)) EndHeading();
            switch (tag.Name)
            {
                case "script" when isStart:
                    Silence(HtmlParseMode.Script);
                    break;
                case "style" or "xmp" or "iframe" or "noembed" or "noframes" when isStart:
                    Silence(HtmlParseMode.Rawtext);
                    break;
                case "title" or "textarea" when isStart:
                    Silence(HtmlParseMode.RCData);
                    break;
                case "table" when isStart && count < MostTables:
                    // A table stands in a cell; anywhere else the one before has no end.
                    if (table is not null && cell is null) Close();
                    else if (table is not null) table.HasInner = true;
                    open.Push(new Table([.. above]));
                    above.Clear();
                    count++;
                    break;
                case "table" when !isStart && table is not null:
                    Close();
                    break;
                case "tr":
                    table?.EndRow();
                    break;
                case "td" or "th":
                    if (isStart) table?.Begin(tag.Name == "th", Number(tag.GetAttribute("colspan")), Number(tag.GetAttribute("rowspan")));
                    else table?.EndCell();
                    break;
                case "br" or "p" or "div" or "li":
                    cell?.Append(' ');
                    break;
            }
        }
        while (open.Count > 0) Close();
        return found;

        void Close()
        {
            var table = open.Pop();
            table.EndRow();
            if (!table.HasInner && table.Lines.Exists(line => line.Length > 0)) found.Add(table);
        }

        void EndHeading()
        {
            if (OnOneLine(words) is { Length: > 0 and <= LongestHeading } heading) above.Add(heading);
            if (above.Count > MostHeadings) above.RemoveAt(0);
            words.Clear();
        }

        // What a script, a style or a box of a form holds is no text of the page.
        void Silence(HtmlParseMode mode)
        {
            tags.State = mode;
            while (tags.Get() is not ({ Type: HtmlTokenType.EndOfFile } or { Type: HtmlTokenType.EndTag })) { }
        }
    }

    private static bool IsInline(string tag) => tag is "a" or "abbr" or "b" or "em" or "font" or "i" or "mark" or "small" or "span" or "strong" or "sub" or "sup" or "time" or "u";

    private static int Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? Math.Max(number, 1) : 1;

    private static string OnOneLine(StringBuilder words) => string.Join(' ', words.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private sealed class Table(List<string> headings)
    {
        /// <summary>One cell more than a list may have: what is refused need not be whole.</summary>
        private const int Widest = CellTable.MostCells + 1;

        private readonly List<string> row = [];
        private bool isHead = true;
        private int width;
        private string? heads;

        // Of each column, in how many rows more a cell of a row above stands.
        private readonly List<int> covered = [];
        private (int Wide, int High) joined;

        /// <summary>Written above it.</summary>
        public List<string> Headings { get; } = headings;

        public List<string> Lines { get; } = [];

        /// <summary>Rows that hold a day.</summary>
        public int Days { get; private set; }

        /// <summary>The same for tables of one list: their headings, or without any how wide they are.</summary>
        public string Kind => heads ?? width.ToString(CultureInfo.InvariantCulture);

        /// <summary>A table that lays a page out.</summary>
        public bool HasInner { get; set; }

        /// <summary>The words of the cell that is open.</summary>
        public StringBuilder? Cell { get; private set; }

        public void Begin(bool isHeading, int wide, int high)
        {
            EndCell();
            isHead &= isHeading;
            Cell = new StringBuilder();
            joined = (Math.Min(wide, Widest), Math.Min(high, SourceText.MostLines));
        }

        public void EndCell()
        {
            if (Cell is null) return;
            var words = OnOneLine(Cell);
            Cell = null;
            while (row.Count < Widest && row.Count < covered.Count && covered[row.Count] > 0) row.Add("");
            for (var i = 0; i < joined.Wide && row.Count < Widest; i++)
            {
                if (joined.High > 1)
                {
                    while (covered.Count <= row.Count) covered.Add(0);
                    // This row takes one off again.
                    covered[row.Count] = joined.High;
                }
                row.Add(i == 0 ? words : "");
            }
        }

        public void EndRow()
        {
            EndCell();
            // An end tag and the next start tag are one end of a row.
            if (row.Count == 0) return;
            for (var i = 0; i < covered.Count; i++) covered[i] = Math.Max(covered[i] - 1, 0);
            if (Lines.Count <= SourceText.MostLines)
            {
                var line = string.Join('\t', row.Select(Quoted)).TrimEnd('\t');
                width = Math.Max(width, row.Count);
                if (isHead && Lines.Count == 0) heads = Spelling.Fold(line);
                else if (row.Exists(cell => cell.Length is > 0 and <= LongestDay && DateText.Find(cell) is not null)) Days++;
                Lines.Add(line);
            }
            row.Clear();
            isHead = true;
        }

        private static string Quoted(string cell) => cell.Contains('"', StringComparison.Ordinal) ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
    }
}
