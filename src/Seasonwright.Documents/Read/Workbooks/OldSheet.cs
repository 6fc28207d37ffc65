using System.Globalization;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>One sheet's section of an XLS.</summary>
internal sealed class OldSheet(string name, OldWorkbook book)
{
    private readonly Dictionary<CellAt, SheetCell> cells = [];
    private readonly List<CellArea> merges = [];
    private readonly HashSet<int> hiddenRows = [], hiddenColumns = [];
    private readonly Dictionary<int, string> noteTexts = [];
    private readonly Dictionary<CellAt, string> comments = [];
    private CellAt? at;
    private int noteObject;

    /// <param name="start">Where the section begins in the stream.</param>
    /// <param name="most">Cells the workbook may still have.</param>
    public Sheet Read(byte[] stream, uint start, bool isHidden, int most)
    {
        try
        {
            foreach (var record in OldRecord.Section(stream, start))
            {
                Take(record);
                if (cells.Count > most) throw new WorkbookTrouble("workbook-cells", name, at, Workbook.MostCells);
            }
        }
        catch (WorkbookTrouble trouble) when (trouble.Id == "workbook-damaged")
        {
            throw new WorkbookTrouble("workbook-damaged", name, at);
        }
        foreach (var (place, comment) in comments) cells[place] = cells.TryGetValue(place, out var cell) ? cell with { Comment = comment } : new(place, new CellValue.Empty(), "", null, null, comment);
        Merging.Check(name, merges);
        return new(name, isHidden, cells.Values, merges, hiddenRows, hiddenColumns, default);
    }

    private void Take(OldRecord record)
    {
        switch (record.Kind)
        {
            case 0x0208: Row(record); break;
            case 0x007D: Columns(record); break;
            case 0x00E5: Merges(record); break;
            case 0x0201:
                var blank = Head(record);
                Put(blank.Look, null, CellValue.Nothing);
                break;
            case 0x00BE: Many(record, 2, (_, _) => CellValue.Nothing); break;
            case 0x00BD: Many(record, 6, (packed, format) => format.Read(packed.Packed(), book.From1904)); break;
            case 0x0203:
                var number = Head(record);
                Put(number.Look, null, Number(number.Look, record.Real()));
                break;
            case 0x027E:
                var packedNumber = Head(record);
                Put(packedNumber.Look, null, Number(packedNumber.Look, record.Packed()));
                break;
            case 0x00FD:
                var shared = Head(record);
                var index = record.Word();
                Put(shared.Look, null, Words(book.Shared(index) ?? throw new WorkbookTrouble("workbook-no-string", name, at, index)));
                break;
            case 0x0204 or 0x00D6:
                var label = Head(record);
                Put(label.Look, null, Words(book.Text(record, shortCount: false)));
                break;
            case 0x0205:
                var either = Head(record);
                Put(either.Look, null, TruthOrError(record.Byte(), record.Byte() != 0));
                break;
            case 0x0006 or 0x0206 or 0x0406: Formula(record); break;
            case 0x0207 when at is { } text && cells.TryGetValue(text, out var formula):
                var (value, words) = Words(book.Text(record, shortCount: false));
                cells[text] = formula with { Value = value, Text = words };
                break;
            case 0x005D: NoteObject(record); break;
            case 0x01B6 when record.PieceCount > 1:
                record.Skip(10);
                var letters = record.Half();
                noteTexts[noteObject] = record.PieceText(1, letters);
                break;
            case 0x001C: Note(record); break;
        }
    }

    private (CellAt At, (NumberFormat Format, Rgb? Fill) Look) Head(OldRecord record)
    {
        at = new(record.Half() + 1, record.Half() + 1);
        if (!at.Value.IsOnSheet) throw new WorkbookTrouble("workbook-off-sheet", name, null, at);
        return (at.Value, book.Look(record.Half()));
    }

    private void Put((NumberFormat Format, Rgb? Fill) look, string? formula, (CellValue Value, string Text) read)
    {
        if (read.Text.Length > Workbook.LongestText) throw new WorkbookTrouble("workbook-text-long", name, at, Workbook.LongestText);
        if (read.Value is not CellValue.Empty || formula is not null || look.Fill is not null) cells[at!.Value] = new(at.Value, read.Value, read.Text, formula, look.Fill, "");
    }

    // A row's cells side by side: the row, the first column, each cell's look and value, the last column.
    private void Many(OldRecord record, int size, Func<OldRecord, NumberFormat, (CellValue, string)> read)
    {
        var (row, column) = (record.Half() + 1, record.Half() + 1);
        while (record.Left >= size + 2)
        {
            at = new(row, column++);
            if (!at.Value.IsOnSheet) throw new WorkbookTrouble("workbook-off-sheet", name, null, at);
            var look = book.Look(record.Half());
            Put(look, null, read(record, look.Format));
        }
    }

    // The stored result: a real number, or two bytes set and the kind in front: text (in the record behind), truth, error, nothing.
    private void Formula(OldRecord record)
    {
        var head = Head(record);
        var result = BitConverter.DoubleToInt64Bits(record.Real());
        var (kind, value) = ((byte)result, (byte)(result >> 16));
        Put(head.Look, "", (ulong)result >> 48 != 0xFFFF ? Number(head.Look, BitConverter.Int64BitsToDouble(result)) : kind switch
        {
            1 or 2 => TruthOrError(value, kind == 2),
            _ => CellValue.Nothing,
        });
    }

    private (CellValue, string) Number((NumberFormat Format, Rgb? Fill) look, double number) =>
        double.IsFinite(number) ? look.Format.Read(number, book.From1904) : throw new WorkbookTrouble("workbook-no-number", name, at, number.ToString(CultureInfo.InvariantCulture));

    private static (CellValue, string) Words(string text) => CellValue.Said(Escapes.Undone(text));

    private static (CellValue, string) TruthOrError(byte value, bool isError)
    {
        if (!isError) return CellValue.Said(value != 0);
        return CellValue.Failed(value switch { 0x00 => "#NULL!", 0x07 => "#DIV/0!", 0x0F => "#VALUE!", 0x17 => "#REF!", 0x1D => "#NAME?", 0x24 => "#NUM!", _ => "#N/A" });
    }

    private void Row(OldRecord record)
    {
        var row = record.Half() + 1;
        record.Skip(10);
        if ((record.Half() & 0x20) != 0) hiddenRows.Add(row);
    }

    private void Columns(OldRecord record)
    {
        var (first, last) = (record.Half() + 1, record.Half() + 1);
        record.Skip(4);
        if ((record.Half() & 1) == 0) return;
        for (var column = first; column <= Math.Min(last, 256); column++) hiddenColumns.Add(column);
    }

    private void Merges(OldRecord record)
    {
        for (var count = record.Half(); count > 0; count--)
        {
            var (firstRow, lastRow, firstColumn, lastColumn) = (record.Half() + 1, record.Half() + 1, record.Half() + 1, record.Half() + 1);
            var area = new CellArea(new(firstRow, firstColumn), new(lastRow, lastColumn));
            if (lastRow < firstRow || lastColumn < firstColumn || !area.Last.IsOnSheet) throw new WorkbookTrouble("workbook-merge", name, null, area);
            Merging.Add(name, merges, area);
        }
    }

    // The first part of an object says its kind and number.
    private void NoteObject(OldRecord record)
    {
        if (record.Left < 8 || record.Half() != 0x15) return;
        record.Skip(4);
        noteObject = record.Half();
    }

    private void Note(OldRecord record)
    {
        if (!book.IsUnicode) return;
        var place = new CellAt(record.Half() + 1, record.Half() + 1);
        record.Skip(2);
        if (place.IsOnSheet && noteTexts.TryGetValue(record.Half(), out var text) && text.Trim().Length > 0) comments[place] = Escapes.Undone(text.Trim());
    }
}
