using System.Globalization;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>One sheet's part of an XLSX.</summary>
internal sealed class SheetPart(string sheet, string part, byte[] bytes, List<string> strings, CellLooks looks, bool from1904)
{
    private static readonly string[] Iso = ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF", "yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss.FFFFFFF'Z'"];

    private readonly Dictionary<CellAt, SheetCell> cells = [];
    private readonly List<CellArea> merges = [];
    private readonly HashSet<int> hiddenRows = [], hiddenColumns = [];

    /// <param name="comments">By cell.</param>
    /// <param name="most">Cells the workbook may still have.</param>
    public Sheet Read(bool isHidden, PrintTitles titles, Dictionary<CellAt, string> comments, int most)
    {
        using var xml = new Part(part, bytes, sheet);
        var next = new CellAt(1, 1);
        while (xml.Read())
        {
            if (!xml.IsStart) continue;
            switch (xml.Element)
            {
                case "col" when xml.Flag("hidden"): Hide(xml); break;
                case "row":
                    next = new(xml.Whole("r") ?? next.Row, 1);
                    if (!next.IsOnSheet) throw xml.Trouble("workbook-off-sheet", xml["r"]);
                    if (xml.Flag("hidden")) hiddenRows.Add(next.Row);
                    next = Row(xml, next.Row, comments, most);
                    break;
                case "mergeCell": Merge(xml); break;
            }
        }
        foreach (var (at, comment) in comments) cells.TryAdd(at, new(at, new CellValue.Empty(), "", null, null, comment));
        Merging.Check(sheet, merges);
        return new(sheet, isHidden, cells.Values, merges, hiddenRows, hiddenColumns, titles);
    }

    /// <summary>Where a row without a number of its own would stand behind this one.</summary>
    private CellAt Row(Part xml, int row, Dictionary<CellAt, string> comments, int most)
    {
        var column = 0;
        foreach (var element in xml.Inside())
        {
            if (element != "c") continue;
            var written = xml["r"];
            var at = new CellAt(row, column + 1);
            if (written is not null ? !CellAt.TryParse(written, out at) : !at.IsOnSheet) throw xml.Trouble("workbook-off-sheet", written ?? $"{at}");
            if (at.Row != row) throw xml.Trouble("workbook-other-row", at, row);
            column = at.Column;
            xml.At = at;
            if (Cell(xml, at, comments.GetValueOrDefault(at, "")) is { } cell) cells[at] = cell;
            if (cells.Count > most) throw xml.Trouble("workbook-cells", Workbook.MostCells);
        }
        xml.At = null;
        return new(row + 1, 1);
    }

    private SheetCell? Cell(Part xml, CellAt at, string comment)
    {
        var (type, look) = (xml["t"] ?? "n", looks[xml.Whole("s") ?? 0]);
        string? formula = null, stored = null, inline = null;
        foreach (var element in xml.Inside())
        {
            if (element == "f") formula = xml.Text();
            else if (element == "v") stored = xml.Text();
            else if (element == "is") inline = Escapes.Undone(xml.Text(skips: inner => inner == "rPh"));
        }
        var (value, text) = inline is not null ? CellValue.Said(inline) : Value(xml, type, stored, look.Format);
        return value is CellValue.Empty && formula is null && look.Fill is null && comment.Length == 0 ? null : new(at, value, text, formula, look.Fill, comment);
    }

    private (CellValue Value, string Text) Value(Part xml, string type, string? stored, NumberFormat format) => stored is null ? CellValue.Nothing : type switch
    {
        "s" => int.TryParse(stored, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < strings.Count ? CellValue.Said(strings[number]) : throw xml.Trouble("workbook-no-string", stored),
        "str" or "inlineStr" => CellValue.Said(Escapes.Undone(stored)),
        "b" => CellValue.Said(stored is "1" or "true"),
        "e" => CellValue.Failed(stored),
        "d" => DateTime.TryParseExact(stored, Iso, CultureInfo.InvariantCulture, DateTimeStyles.None, out var at) ? Day(at) : throw xml.Trouble("workbook-no-number", stored),
        _ when stored.Trim().Length == 0 => CellValue.Nothing,
        _ => double.TryParse(stored, NumberStyles.Float, CultureInfo.InvariantCulture, out var amount) && double.IsFinite(amount) ? format.Read(amount, from1904) : throw xml.Trouble("workbook-no-number", stored),
    };

    private static (CellValue, string) Day(DateTime at) => at.TimeOfDay == TimeSpan.Zero
        ? (new CellValue.Day(DateOnly.FromDateTime(at), null), at.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
        : (new CellValue.Day(DateOnly.FromDateTime(at), TimeOnly.FromDateTime(at)), at.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture));

    private void Hide(Part xml)
    {
        if (xml.Whole("min") is not { } first || xml.Whole("max") is not { } last) return;
        for (var column = Math.Max(1, first); column <= Math.Min(CellAt.LastColumn, last); column++) hiddenColumns.Add(column);
    }

    private void Merge(Part xml)
    {
        if (!CellArea.TryParse(xml["ref"], out var area)) throw xml.Trouble("workbook-merge", xml["ref"]);
        Merging.Add(sheet, merges, area);
    }
}
