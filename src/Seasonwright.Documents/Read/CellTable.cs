using System.Text;
using CsvHelper;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read;

/// <summary>A text as rows of cells, by the delimiter that the whole file speaks for. Blank lines are rows too, so that no line is lost.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Delimiter">A space for columns set apart by spaces. Null when the lines have no cells: each is one cell then.</param>
/// <param name="Problems">If not empty, there are no rows.</param>
public sealed record CellTable(string Name, char? Delimiter, ValueList<CellRow> Rows, ValueList<Problem> Problems)
{
    /// <summary>Cells of one row.</summary>
    public const int MostCells = 200;

    /// <summary>In the order in which they are preferred when the file speaks for several.</summary>
    private static readonly char[] Delimiters = ['\t', ';', '|', ','];

    /// <summary>A first line <c>sep=;</c>, as spreadsheets write it, decides.</summary>
    public static CellTable Read(SourceText source)
    {
        if (source.Problems.Count > 0) return new(source.Name, null, ValueList<CellRow>.Empty, source.Problems);
        if (source.Lines[0].StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && source.Lines[0].Length == 5 && Delimiters.Contains(source.Lines[0][4])) return Cut(source, source.Lines[0][4]);
        var best = Delimiters.Select(delimiter => (delimiter, table: Cut(source, delimiter)))
            .Select(cut => (cut.table, weight: Weight(cut.table, cut.delimiter)))
            .Where(cut => cut.weight > 0)
            .OrderByDescending(cut => cut.weight).Select(cut => cut.table).FirstOrDefault();
        if (best is { Delimiter: not ',' }) return best;
        var spaced = SpacedColumns.Of(source.Lines);
        if (spaced is not null && (best is null || spaced.Value.Columns > best.Rows.Max(row => row.Cells.Count))) return new(source.Name, ' ', spaced.Value.Rows, ValueList<Problem>.Empty);
        return best ?? new(source.Name, null, Lines(source), ValueList<Problem>.Empty);
    }

    /// <summary>Cells as spreadsheets copy them: set apart by tabs, whatever else they hold.</summary>
    public static CellTable OfTabs(SourceText source) => source.Problems.Count > 0 ? new(source.Name, '\t', ValueList<CellRow>.Empty, source.Problems) : Cut(source, '\t');

    /// <summary>A text without columns: every line a row of one cell.</summary>
    public static CellTable OfLines(SourceText source) => new(source.Name, null, Lines(source), source.Problems);

    private static ValueList<CellRow> Lines(SourceText source) =>
        source.Lines.Select((line, index) => new CellRow(index + 1, new([Spelling.Tidy(line)]), line)).ToValueList();

    /// <summary>
    /// How much a file speaks for a delimiter: rows that have the usual number of cells, weighed by that number. A comma or
    /// semicolon of prose stands in few lines and in each a different number of times; a tab or bar is never prose.
    /// </summary>
    private static double Weight(CellTable table, char delimiter)
    {
        if (table.Problems.Count > 0) return table.Problems[0].Id == "quote-open" ? 0.01 : 0;
        var filled = table.Rows.Where(row => !row.IsBlank).ToList();
        var usual = filled.Where(row => row.Cells.Count > 1).GroupBy(row => row.Cells.Count).OrderByDescending(rows => rows.Count() * Math.Log2(rows.Key)).FirstOrDefault();
        if (usual is null) return 0;
        var cut = filled.Count(row => row.Cells.Count > 1);
        var enough = delimiter == '\t' ? cut >= 2 || cut * 2 >= filled.Count : usual.Count() * 2 >= filled.Count;
        return enough ? (delimiter == '\t' ? cut : usual.Count()) * Math.Log2(usual.Key) : 0;
    }

    /// <summary>Whether most lines hold one delimiter: what cannot be cut then is a broken table and not prose.</summary>
    public static bool IsIn(SourceText source)
    {
        var filled = source.Lines.Where(line => !string.IsNullOrWhiteSpace(line)).ToList();
        return Delimiters.Any(delimiter => filled.Count(line => line.Contains(delimiter, StringComparison.Ordinal)) * 2 > filled.Count);
    }

    private static CellTable Cut(SourceText source, char delimiter)
    {
        var rows = new List<CellRow>();
        Problem? problem = null;
        using var reader = CsvReader.FromText(source.Text, new CsvReaderOptions
        {
            Separator = delimiter,
            HasHeader = false,
            SkipEmptyLines = false,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            DetectSeparatorHint = false,
            OnMalformedRecord = record =>
            {
                // A quote that is never closed swallows every line behind it.
                if (record.Reason == CsvMalformedReason.UnterminatedQuote) problem = Problem.Of("quote-open", source.Name, (int)record.LineNumber, null);
            },
        });
        while (problem is null && reader.Read())
        {
            var line = (int)reader.LineNumber;
            if (reader.FieldCount > MostCells) problem = Problem.Of("cells-many", source.Name, line, null, reader.FieldCount, MostCells);
            rows.Add(new CellRow(line, Enumerable.Range(0, reader.FieldCount).Select(column => Spelling.Tidy(reader.GetString(column))).ToValueList(), Encoding.UTF8.GetString(reader.RawRecord)));
        }
        return problem is null ? new(source.Name, delimiter, rows.ToValueList(), ValueList<Problem>.Empty) : new(source.Name, delimiter, ValueList<CellRow>.Empty, new([problem]));
    }
}
