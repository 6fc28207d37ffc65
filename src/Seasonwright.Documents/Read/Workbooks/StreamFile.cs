using System.Buffers.Binary;
using System.Text;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// A file of streams, as programs kept documents before 2007 ([MS-CFB]): sectors chained by a table, a directory of names, and a stream of
/// small sectors for small streams. A chain cannot be longer than the file, so one that runs in a circle ends.
/// </summary>
internal sealed class StreamFile
{
    private const uint EndOfChain = 0xFFFFFFFE;

    private readonly byte[] bytes;
    private readonly int sector;
    private readonly uint[] table;
    private readonly byte[] small;
    private readonly uint[] smallTable;
    private readonly Dictionary<string, (uint First, int Length)> streams = new(StringComparer.OrdinalIgnoreCase);

    public StreamFile(byte[] bytes)
    {
        if (bytes.Length < 512) throw Damaged();
        this.bytes = bytes;
        sector = Half(30) switch { 9 => 512, 12 => 4096, _ => throw Damaged() };
        table = Table();
        var root = default((uint First, int Length));
        var directory = Chain(Word(48), int.MaxValue);
        for (var at = 0; at + 128 <= directory.Length; at += 128)
        {
            var entry = directory.AsSpan(at, 128);
            var letters = Math.Clamp(BinaryPrimitives.ReadUInt16LittleEndian(entry[64..]) - 2, 0, 62);
            var found = (BinaryPrimitives.ReadUInt32LittleEndian(entry[116..]), (int)Math.Min(int.MaxValue, BinaryPrimitives.ReadUInt32LittleEndian(entry[120..])));
            if (entry[66] == 5) root = found;
            if (entry[66] == 2) streams.TryAdd(Encoding.Unicode.GetString(entry[..letters]), found);
        }
        small = root.Length == 0 ? [] : Chain(root.First, root.Length);
        smallTable = Words(Chain(Word(60), int.MaxValue));
    }

    public bool Has(string stream) => streams.ContainsKey(stream);

    /// <summary>The stream's bytes, or null when there is none of that name.</summary>
    public byte[]? Find(string stream)
    {
        if (!streams.TryGetValue(stream, out var found)) return null;
        if (found.Length > bytes.Length) throw Damaged();
        return found.Length < 4096 && small.Length > 0 ? SmallChain(found.First, found.Length) : Chain(found.First, found.Length);
    }

    // The table's own sectors: 109 are named in the head, more in a chain of sectors of names.
    private uint[] Table()
    {
        var names = new List<uint>();
        for (var at = 76; at < 512; at += 4) names.Add(Word(at));
        var (next, most) = (Word(68), bytes.Length / sector);
        for (var count = 0; next < EndOfChain - 1 && count <= most; count++)
        {
            var more = Sector(next);
            for (var at = 0; at < sector - 4; at += 4) names.Add(BinaryPrimitives.ReadUInt32LittleEndian(more[at..]));
            next = BinaryPrimitives.ReadUInt32LittleEndian(more[(sector - 4)..]);
        }
        using var all = new MemoryStream();
        foreach (var name in names.Where(name => name < EndOfChain - 1).Take(most + 1)) all.Write(Sector(name));
        return Words(all.ToArray());
    }

    private byte[] Chain(uint first, int length)
    {
        using var all = new MemoryStream();
        var most = bytes.Length / sector + 1;
        for (var (next, count) = (first, 0); next < EndOfChain - 1 && all.Length < length; next = next < table.Length ? table[next] : throw Damaged())
        {
            if (++count > most) throw Damaged();
            all.Write(Sector(next));
        }
        if (length == int.MaxValue) return all.ToArray();
        return all.Length >= length ? all.ToArray()[..length] : throw Damaged();
    }

    private byte[] SmallChain(uint first, int length)
    {
        using var all = new MemoryStream();
        var most = small.Length / 64 + 1;
        for (var (next, count) = (first, 0); next < EndOfChain - 1 && all.Length < length; next = next < smallTable.Length ? smallTable[next] : throw Damaged())
        {
            if (++count > most || (long)next * 64 + 64 > small.Length) throw Damaged();
            all.Write(small, (int)next * 64, 64);
        }
        return all.Length >= length ? all.ToArray()[..length] : throw Damaged();
    }

    // The last sector of a file may be cut short.
    private ReadOnlySpan<byte> Sector(uint number)
    {
        var start = ((long)number + 1) * sector;
        if (start >= bytes.Length) throw Damaged();
        var there = bytes.AsSpan((int)start, (int)Math.Min(sector, bytes.Length - start));
        if (there.Length == sector) return there;
        var whole = new byte[sector];
        there.CopyTo(whole);
        return whole;
    }

    private static uint[] Words(byte[] from)
    {
        var words = new uint[from.Length / 4];
        for (var i = 0; i < words.Length; i++) words[i] = BinaryPrimitives.ReadUInt32LittleEndian(from.AsSpan(i * 4));
        return words;
    }

    private int Half(int at) => BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at));

    private uint Word(int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(at));

    private static WorkbookTrouble Damaged() => new("workbook-damaged", null, null);
}
