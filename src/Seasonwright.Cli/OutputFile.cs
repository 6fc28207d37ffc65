using System.Text;

namespace Seasonwright.Cli;

/// <summary>
/// A file a command writes: beside its place first, flushed to the disk, then renamed, so that there is the old file or the
/// whole new one at every moment. It may be the file that was read.
/// </summary>
internal static class OutputFile
{
    /// <returns>False after saying why it could not be written; what stood there stands there still.</returns>
    public static bool Write(string path, string text, Terminal terminal) => Write(path, Encoding.UTF8.GetBytes(text), terminal);

    /// <inheritdoc cref="Write(string, string, Terminal)"/>
    public static bool Write(string path, byte[] content, Terminal terminal)
    {
        string? temporary = null;
        try
        {
            if (Directory.Exists(path)) return No("out.directory");
            // Through a link to the file it means; the link stays.
            var named = new FileInfo(path);
            var target = named.LinkTarget is null ? named.FullName : named.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
            if (!Directory.Exists(Path.GetDirectoryName(target))) return No("out.no-directory");
            // What is written to a device goes nowhere, and a rename would put a file in its place.
            if (!OperatingSystem.IsWindows() && target.StartsWith("/dev/", StringComparison.Ordinal) && !target.StartsWith("/dev/shm/", StringComparison.Ordinal)) return No("out.device");
            var exists = File.Exists(target);
            // A rename would get past the protection that the file's owner meant.
            if (exists && File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly)) return No("out.read-only");

            temporary = $"{target}.{Guid.NewGuid():N}.tmp";
            // Written through: the platform is silent about an error of the flush alone.
            using (var file = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 1 << 16, FileOptions.WriteThrough))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }
            if (exists && !OperatingSystem.IsWindows()) File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            File.Move(temporary, target, overwrite: true);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            if (temporary is not null) DeleteQuietly(temporary);
            return No("out.unwritable", error.Message);
        }

        bool No(string id, object? more = null)
        {
            terminal.Complain(id, path, more);
            return false;
        }
    }

    private static void DeleteQuietly(string file)
    {
        try { File.Delete(file); }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException) { /* The trouble that led here is told already. */ }
    }
}
