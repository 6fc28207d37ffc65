using System.IO.Compression;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Packages that hold the same are the same: the library writes the time of the day into them.</summary>
internal static class SameBytes
{
    /// <summary>The package with its parts in the order of their names, all of one time.</summary>
    public static byte[] Of(Stream package)
    {
        using var written = new MemoryStream();
        using (var from = new ZipArchive(package, ZipArchiveMode.Read, leaveOpen: true))
        using (var to = new ZipArchive(written, ZipArchiveMode.Create, leaveOpen: true))
        {
            // Readers look for the list of contents first.
            foreach (var part in from.Entries.OrderBy(part => part.FullName != "[Content_Types].xml").ThenBy(part => part.FullName, StringComparer.Ordinal))
            {
                var copy = to.CreateEntry(part.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
                using var source = part.Open();
                using var target = copy.Open();
                source.CopyTo(target);
            }
        }
        return written.ToArray();
    }
}
