using System.IO.Compression;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// The parts packed into a file, each whole and checked: no more than declared, no more than <see cref="MostBytes"/> in all however
/// often a part is read, its checksum right. So a packed bomb stops early, and a damaged file is never read as another one.
/// </summary>
internal sealed class Parts : IDisposable
{
    /// <summary>Unpacked, of all parts read; a year workbook has less than 2 MB.</summary>
    public const int MostBytes = 48_000_000;

    public const int MostParts = 2_000;

    private static readonly uint[] Checks = [.. Enumerable.Range(0, 256).Select(n =>
    {
        var check = (uint)n;
        for (var bit = 0; bit < 8; bit++) check = (check & 1) == 1 ? 0xEDB88320 ^ (check >> 1) : check >> 1;
        return check;
    })];

    private readonly ZipArchive archive;
    private readonly Dictionary<string, ZipArchiveEntry> byName = new(StringComparer.OrdinalIgnoreCase);
    private long left = MostBytes;

    public Parts(byte[] bytes)
    {
        try
        {
            archive = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
            if (archive.Entries.Count > MostParts) throw new WorkbookTrouble("workbook-parts", null, null, archive.Entries.Count, MostParts);
            foreach (var entry in archive.Entries) byName.TryAdd(Normal(entry.FullName), entry);
        }
        catch (Exception e) when (IsDamage(e))
        {
            throw Damaged();
        }
    }

    public bool Has(string part) => byName.ContainsKey(Normal(part));

    /// <summary>The part's bytes, or null when there is no such part.</summary>
    public byte[]? Find(string part)
    {
        if (!byName.TryGetValue(Normal(part), out var entry)) return null;
        try
        {
            if (entry.IsEncrypted) throw new WorkbookTrouble("workbook-encrypted", null, null);
            if (entry.Length > left) throw TooMuch();
            using var unpacked = entry.Open();
            using var bytes = new MemoryStream();
            var (chunk, check) = (new byte[81920], uint.MaxValue);
            for (int count; (count = unpacked.Read(chunk)) > 0;)
            {
                if ((left -= count) < 0 || bytes.Length + count > entry.Length) throw TooMuch();
                foreach (var one in chunk.AsSpan(0, count)) check = Checks[(check ^ one) & 0xFF] ^ (check >> 8);
                bytes.Write(chunk, 0, count);
            }
            return bytes.Length == entry.Length && ~check == entry.Crc32 ? bytes.ToArray() : throw Damaged();
        }
        catch (Exception e) when (IsDamage(e))
        {
            throw Damaged();
        }
    }

    public void Dispose() => archive.Dispose();

    private static string Normal(string part) => part.Replace('\\', '/').TrimStart('/');

    private static bool IsDamage(Exception e) => e is InvalidDataException or IOException or NotSupportedException or ArgumentException or OverflowException;

    private static WorkbookTrouble Damaged() => new("workbook-damaged", null, null);

    private static WorkbookTrouble TooMuch() => new("workbook-bomb", null, null, MostBytes);
}
