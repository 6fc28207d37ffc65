using System.Buffers.Binary;
using System.IO.Compression;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// A TrueType file packed for a page that carries its fonts inside: a bit over half the size. WOFF File Format 1.0
/// (W3C Recommendation, 13 December 2012): every table deflated on its own, if that makes it smaller.
/// </summary>
public static class Woff
{
    private const int HeaderLength = 44;
    private const int EntryLength = 20;
    private const int TrueTypeHeaderLength = 12;
    private const int TrueTypeEntryLength = 16;

    /// <summary>The packed bytes; the same file gives the same bytes.</summary>
    /// <param name="trueType">A sound TrueType file; the committed ones are.</param>
    public static byte[] Of(Stream trueType)
    {
        using var all = new MemoryStream();
        trueType.CopyTo(all);
        var font = all.ToArray();
        var count = BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4));
        using var tables = new MemoryStream();
        var directory = new byte[count * EntryLength];
        var bodyStart = HeaderLength + directory.Length;
        var unpacked = TrueTypeHeaderLength + count * TrueTypeEntryLength;
        for (var i = 0; i < count; i++)
        {
            // In: tag, check sum, offset, length. Out: tag, offset, packed length, length, check sum.
            var from = font.AsSpan(TrueTypeHeaderLength + i * TrueTypeEntryLength, TrueTypeEntryLength);
            var to = directory.AsSpan(i * EntryLength, EntryLength);
            var offset = (int)BinaryPrimitives.ReadUInt32BigEndian(from[8..]);
            var length = (int)BinaryPrimitives.ReadUInt32BigEndian(from[12..]);
            var packed = Packed(font.AsSpan(offset, length));
            from[..4].CopyTo(to);
            BinaryPrimitives.WriteUInt32BigEndian(to[4..], (uint)(bodyStart + tables.Length));
            BinaryPrimitives.WriteUInt32BigEndian(to[8..], (uint)packed.Length);
            BinaryPrimitives.WriteUInt32BigEndian(to[12..], (uint)length);
            from.Slice(4, 4).CopyTo(to[16..]);
            tables.Write(packed);
            while (tables.Length % 4 != 0)
                tables.WriteByte(0);
            unpacked += (length + 3) / 4 * 4;
        }
        var woff = new byte[bodyStart + tables.Length];
        "wOFF"u8.CopyTo(woff);
        font.AsSpan(0, 4).CopyTo(woff.AsSpan(4));
        BinaryPrimitives.WriteUInt32BigEndian(woff.AsSpan(8), (uint)woff.Length);
        BinaryPrimitives.WriteUInt16BigEndian(woff.AsSpan(12), count);
        BinaryPrimitives.WriteUInt32BigEndian(woff.AsSpan(16), (uint)unpacked);
        directory.CopyTo(woff.AsSpan(HeaderLength));
        tables.ToArray().CopyTo(woff.AsSpan(bodyStart));
        return woff;
    }

    private static byte[] Packed(ReadOnlySpan<byte> table)
    {
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
            deflate.Write(table);
        return packed.Length < table.Length ? packed.ToArray() : table.ToArray();
    }
}
