using System.Buffers.Binary;
using System.Text;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>
/// A second opinion on the font's widths, read from the tables themselves and not by the shaper: OpenType
/// specification 1.9, chapters head, hhea, hmtx and cmap (format 4).
/// </summary>
internal sealed class TrueTypeFile
{
    private readonly byte[] bytes;
    private readonly int hmtx;
    private readonly int longMetrics;
    private readonly int segments;

    public TrueTypeFile(FontFile file)
    {
        using var stream = file.Open();
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        bytes = memory.ToArray();
        UnitsPerEm = U16(Table("head") + 18);
        longMetrics = U16(Table("hhea") + 34);
        hmtx = Table("hmtx");
        segments = Format4(Table("cmap"));
    }

    public int UnitsPerEm { get; }

    public int Advance(char c) => U16(hmtx + 4 * Math.Min(Glyph(c), longMetrics - 1));

    public bool Has(char c) => Glyph(c) != 0;

    private int Glyph(char c)
    {
        var doubled = U16(segments + 6);
        var (ends, starts) = (segments + 14, segments + 16 + doubled);
        var (deltas, offsets) = (starts + doubled, starts + 2 * doubled);
        for (var i = 0; i < doubled; i += 2)
        {
            if (U16(ends + i) < c)
                continue;
            if (U16(starts + i) > c)
                return 0;
            var offset = U16(offsets + i);
            if (offset == 0)
                return (c + U16(deltas + i)) & 0xFFFF;
            var glyph = U16(offsets + i + offset + 2 * (c - U16(starts + i)));
            return glyph == 0 ? 0 : (glyph + U16(deltas + i)) & 0xFFFF;
        }
        return 0;
    }

    private int Format4(int cmap)
    {
        for (var i = 0; i < U16(cmap + 2); i++)
        {
            var at = cmap + (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(cmap + 4 + 8 * i + 4));
            if (U16(at) == 4)
                return at;
        }
        throw new InvalidDataException("No cmap of format 4.");
    }

    private int Table(string tag)
    {
        for (var at = 12; at < 12 + 16 * U16(4); at += 16)
        {
            if (Encoding.ASCII.GetString(bytes, at, 4) == tag)
                return (int)BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at + 8));
        }
        throw new InvalidDataException($"No table {tag}.");
    }

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));
}
