using System.Buffers.Binary;
using System.Text;

namespace Seasonwright.Documents.Tests.Read.Workbooks;

/// <summary>A file of streams ([MS-CFB]) with one stream, made by hand.</summary>
internal static class MadeStreams
{
    private const uint End = 0xFFFFFFFE, Free = 0xFFFFFFFF;

    public static byte[] File(string name, byte[] content, Action<byte[]>? spoil = null)
    {
        var sectors = (content.Length + 511) / 512;
        var bytes = new byte[512 * (3 + sectors)];
        ((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]).CopyTo(bytes);
        bytes[30] = 9;
        Word(44, 1);
        Word(48, 1);
        Word(60, End);
        Word(68, End);
        for (var at = 76; at < 512; at += 4) Word(at, at == 76 ? 0 : Free);
        for (var sector = 0; sector < 128; sector++) Word(512 + sector * 4, sector == 0 ? 0xFFFFFFFD : sector == 1 || sector == sectors + 1 ? End : sector < sectors + 2 ? (uint)sector + 1 : Free);
        Entry(0, "Root Entry", 5, End, 0);
        Entry(1, name, 2, sectors == 0 ? End : 2, content.Length);
        content.CopyTo(bytes, 512 * 3);
        spoil?.Invoke(bytes);
        return bytes;

        void Word(int at, uint value) => BinaryPrimitives.WriteUInt32LittleEndian(bytes.AsSpan(at), value);

        void Entry(int number, string called, byte type, uint first, int length)
        {
            var at = 1024 + number * 128;
            Encoding.Unicode.GetBytes(called).CopyTo(bytes, at);
            bytes[at + 64] = (byte)(called.Length * 2 + 2);
            bytes[at + 66] = type;
            Word(at + 116, first);
            Word(at + 120, (uint)length);
        }
    }

    /// <summary>Records one behind the other; each its number and bytes.</summary>
    public static byte[] Records(params (int Kind, byte[] Bytes)[] records) =>
        [.. records.SelectMany(record => (byte[])[(byte)record.Kind, (byte)(record.Kind >> 8), (byte)record.Bytes.Length, (byte)(record.Bytes.Length >> 8), .. record.Bytes])];
}
