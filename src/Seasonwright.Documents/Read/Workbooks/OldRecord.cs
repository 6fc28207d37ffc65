using System.Buffers.Binary;
using System.Text;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// One record of an old workbook ([MS-XLS]) with those that continue it. Reading past its end is damage, told by
/// <see cref="OldWorkbook.Read"/>; nothing is ever reserved by a count the file declares.
/// </summary>
/// <param name="kind">The record's number.</param>
/// <param name="pieces">Its bytes, then those of each record that continues it.</param>
internal sealed class OldRecord(int kind, List<ReadOnlyMemory<byte>> pieces)
{
    private int piece, at;

    public int Kind => kind;

    /// <summary>Bytes left in the piece being read.</summary>
    public int Left => pieces[piece].Length - at;

    public int PieceCount => pieces.Count;

    /// <summary>Records from a place of the stream to the end of its section.</summary>
    public static IEnumerable<OldRecord> Section(byte[] stream, long start)
    {
        const int Continue = 0x3C, End = 0x0A;
        for (var place = start; place + 4 <= stream.Length;)
        {
            var (kind, pieces) = (Half(place), new List<ReadOnlyMemory<byte>>());
            do
            {
                var length = Half(place + 2);
                if (place + 4 + length > stream.Length) throw new WorkbookTrouble("workbook-damaged", null, null);
                pieces.Add(stream.AsMemory((int)place + 4, length));
                place += 4 + length;
            }
            while (place + 4 <= stream.Length && Half(place) == Continue);
            if (kind == End) yield break;
            yield return new OldRecord(kind, pieces);
        }
        throw new WorkbookTrouble("workbook-damaged", null, null);

        int Half(long from) => BinaryPrimitives.ReadUInt16LittleEndian(stream.AsSpan((int)from));
    }

    public byte Byte() => Take(1)[0];

    public int Half() => BinaryPrimitives.ReadUInt16LittleEndian(Take(2));

    public uint Word() => BinaryPrimitives.ReadUInt32LittleEndian(Take(4));

    public double Real() => BinaryPrimitives.ReadDoubleLittleEndian(Take(8));

    /// <summary>A number packed into 30 bits: whole or the upper half of a real one, perhaps a hundredfold.</summary>
    public double Packed()
    {
        var word = Word();
        var number = (word & 2) != 0 ? (int)word >> 2 : BitConverter.Int64BitsToDouble((long)(word & 0xFFFFFFFC) << 32);
        return (word & 1) != 0 ? number / 100 : number;
    }

    public void Skip(int count)
    {
        while (count > Left && piece + 1 < pieces.Count)
        {
            count -= Left;
            (piece, at) = (piece + 1, 0);
        }
        Take(count);
    }

    /// <summary>The text of a piece that continues the record, its first byte saying how wide its letters are.</summary>
    public string PieceText(int number, int letters)
    {
        (piece, at) = (number, 0);
        return Letters(letters, (Byte() & 1) != 0);
    }

    /// <summary>A text with its count of letters in one or two bytes, its flags, and perhaps looks and readings behind it.</summary>
    public string Text(bool shortCount)
    {
        var (letters, flags) = (shortCount ? Byte() : Half(), (int)Byte());
        var (runs, reading) = ((flags & 8) != 0 ? Half() : 0, (flags & 4) != 0 ? Word() : 0);
        var text = Letters(letters, (flags & 1) != 0);
        Skip(runs * 4);
        if (reading > 0) Skip((int)Math.Min(int.MaxValue, reading));
        return text;
    }

    /// <summary>A text of bytes in a code page, as version 5 writes it.</summary>
    public string Text(bool shortCount, Encoding page) => page.GetString(Take(shortCount ? Byte() : Half()));

    // A text that runs on into the next piece says there anew how wide its letters are.
    private string Letters(int count, bool wide)
    {
        var text = new StringBuilder();
        while (count > 0)
        {
            var here = Math.Min(count, Left / (wide ? 2 : 1));
            var bytes = Take(here * (wide ? 2 : 1));
            text.Append(wide ? Encoding.Unicode.GetString(bytes) : Encoding.Latin1.GetString(bytes));
            count -= here;
            if (count == 0) break;
            if (piece + 1 == pieces.Count) throw new WorkbookTrouble("workbook-damaged", null, null);
            (piece, at) = (piece + 1, 0);
            wide = (Byte() & 1) != 0;
        }
        return text.ToString();
    }

    // A value stands whole in one piece.
    private ReadOnlySpan<byte> Take(int count)
    {
        if (Left == 0 && count > 0 && piece + 1 < pieces.Count) (piece, at) = (piece + 1, 0);
        if (count > Left) throw new WorkbookTrouble("workbook-damaged", null, null);
        at += count;
        return pieces[piece].Span[(at - count)..at];
    }
}
