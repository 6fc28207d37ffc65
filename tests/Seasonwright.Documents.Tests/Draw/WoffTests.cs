using System.Buffers.Binary;
using System.IO.Compression;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>
/// The packed font unpacked again by the layout of WOFF File Format 1.0 (W3C, 2012), sections 3 to 5. That a browser takes
/// it is checked by the pages that carry it.
/// </summary>
public sealed class WoffTests
{
    [Fact]
    public void Every_table_comes_back_byte_for_byte()
    {
        foreach (var file in FontFile.All)
        {
            using var stream = file.Open();
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            var font = copy.ToArray();
            var woff = Woff.Of(file.Open());

            Assert.Equal("wOFF"u8.ToArray(), woff[..4]);
            Assert.Equal((uint)woff.Length, Number(woff, 8));
            Assert.Equal((uint)font.Length, Number(woff, 16));
            Assert.True(woff.Length < font.Length * 0.65, $"{woff.Length} of {font.Length} bytes");
            var tables = BinaryPrimitives.ReadUInt16BigEndian(woff.AsSpan(12));
            for (var i = 0; i < tables; i++)
            {
                var (entry, source) = (44 + 20 * i, 12 + 16 * i);
                var (at, packed, length) = ((int)Number(woff, entry + 4), (int)Number(woff, entry + 8), (int)Number(woff, entry + 12));
                Assert.Equal(0, at % 4);
                Assert.Equal(font[source..(source + 4)], woff[entry..(entry + 4)]);
                var table = woff[at..(at + packed)];
                if (packed < length)
                {
                    using var inflate = new ZLibStream(new MemoryStream(table), CompressionMode.Decompress);
                    using var whole = new MemoryStream();
                    inflate.CopyTo(whole);
                    table = whole.ToArray();
                }
                var from = (int)Number(font, source + 8);
                Assert.Equal(font[from..(from + length)], table);
            }
        }
    }

    private static uint Number(byte[] bytes, int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
}
