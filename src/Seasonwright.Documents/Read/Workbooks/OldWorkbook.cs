using System.Collections.Immutable;
using System.Text;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// XLS, the form before 2007: records in a stream ([MS-XLS], and version 5 before it). Values, fills, merges, notes and what is hidden are
/// read; macros, charts and links never are. A formula is told, its text is not.
/// </summary>
internal sealed class OldWorkbook
{
    private static readonly byte[] Streams = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];

    private readonly List<(string Name, bool IsHidden, uint Start)> sheets = [];
    private readonly Dictionary<int, NumberFormat> formats = [];
    private readonly List<(int Format, int Pattern, int Fore)> looks = [];
    private readonly List<string> strings = [];
    private readonly List<Rgb> palette = [];
    private ImmutableArray<(NumberFormat Format, Rgb? Fill)> resolved = [];
    private Encoding page = CodePagesEncodingProvider.Instance.GetEncoding(1252)!;

    /// <summary>Whether this is version 8, of 1997 to 2003, and not 5.</summary>
    public bool IsUnicode { get; private set; }

    public bool From1904 { get; private set; }

    private OldWorkbook()
    {
    }

    /// <summary>A file of streams, or a bare sheet of versions 2 to 5.</summary>
    public static bool Is(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Streams) || bytes.Length > 8 && bytes[0] == 9 && bytes[1] is 0 or 2 or 4 or 8 && bytes[2] is 4 or 6 or 8 or 16 && bytes[3] == 0;

    public static ValueList<Sheet> Read(byte[] bytes)
    {
        if (!bytes.AsSpan().StartsWith(Streams)) throw new WorkbookTrouble("workbook-older", null, null);
        var file = new StreamFile(bytes);
        if (file.Has("EncryptedPackage") || file.Has("EncryptionInfo")) throw new WorkbookTrouble("workbook-encrypted", null, null);
        if (file.Has("WordDocument")) throw new WorkbookTrouble("workbook-other-document", null, null, "application/msword");
        var stream = file.Find("Workbook") ?? file.Find("Book") ?? throw new WorkbookTrouble("workbook-no-part", null, null, "Workbook");
        var book = new OldWorkbook();
        foreach (var record in OldRecord.Section(stream, 0)) book.Take(record);
        book.resolved = book.Resolved();
        Workbook.CheckSheets(book.sheets.Count);
        var (read, left) = (new List<Sheet>(), Workbook.MostCells);
        foreach (var (name, isHidden, start) in book.sheets)
        {
            var sheet = new OldSheet(name, book).Read(stream, start, isHidden, left);
            left -= sheet.Cells.Count;
            read.Add(sheet);
        }
        return read.ToValueList();
    }

    public string Text(OldRecord record, bool shortCount) => IsUnicode ? record.Text(shortCount) : record.Text(shortCount, page);

    /// <summary>A text that cells share; null when there is no such.</summary>
    public string? Shared(uint number) => number < strings.Count ? strings[(int)number] : null;

    /// <summary>A style that the workbook does not have is the plain one.</summary>
    public (NumberFormat Format, Rgb? Fill) Look(int number) => number < resolved.Length ? resolved[number] : (NumberFormat.General, null);

    /// <summary>Looks once for all cells, when all that they name is known: the palette stands behind them.</summary>
    private ImmutableArray<(NumberFormat, Rgb?)> Resolved()
    {
        var colours = new Colours([], palette);
        return [.. looks.Select(look => (formats.GetValueOrDefault(look.Format) ?? NumberFormat.BuiltIn(look.Format), look.Pattern is 0 or 17 ? null : colours.Indexed(look.Fore)))];
    }

    private void Take(OldRecord record)
    {
        switch (record.Kind)
        {
            case 0x0809:
                IsUnicode = record.Half() == 0x0600;
                break;
            case 0x002F: throw new WorkbookTrouble("workbook-encrypted", null, null);
            case 0x0022:
                From1904 = record.Half() == 1;
                break;
            case 0x0042 when CodePagesEncodingProvider.Instance.GetEncoding(record.Half()) is { IsSingleByte: true } told:
                page = told;
                break;
            case 0x0085:
                var (start, state, type) = (record.Word(), record.Byte(), record.Byte());
                var name = Text(record, shortCount: true);
                if (type == 0) sheets.Add((name, state is 1 or 2, start));
                break;
            case 0x041E:
                var format = record.Half();
                formats.TryAdd(format, NumberFormat.Of(Text(record, shortCount: !IsUnicode)));
                break;
            case 0x00E0:
                looks.Add(LookOf(record));
                break;
            case 0x0092:
                for (var count = record.Half(); count > 0 && palette.Count < 64; count--)
                {
                    if (palette.Count == 0) for (var first = 0; first < 8; first++) palette.Add(new Colours([], []).Indexed(first)!.Value);
                    palette.Add(new(record.Byte(), record.Byte(), record.Byte()));
                    record.Skip(1);
                }
                break;
            case 0x00FC:
                record.Skip(4);
                for (var count = record.Word(); count > 0; count--) strings.Add(record.Text(shortCount: false));
                break;
        }
    }

    // Version 8 has the colours in the last six of 20 bytes, version 5 in the ninth to twelfth of 16.
    private (int Format, int Pattern, int Fore) LookOf(OldRecord record)
    {
        record.Skip(2);
        var format = record.Half();
        record.Skip(IsUnicode ? 10 : 4);
        var word = record.Word();
        return IsUnicode ? (format, (int)(word >> 26), record.Half() & 0x7F) : (format, (int)(word >> 16) & 0x3F, (int)word & 0x7F);
    }
}
