using System.Globalization;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store;

/// <summary>
/// Holds a data folder for one process. The operating system lets go of the lock when the process ends, however it ends;
/// the file stays and means nothing by itself. A second file says where the holder can be reached.
/// </summary>
internal sealed class FolderLock : IDisposable
{
    // "The file is locked": errno on Linux and macOS, and Windows' sharing violation.
    private const int LinuxWouldBlock = 11, MacWouldBlock = 35, WindowsSharingViolation = 32;

    private readonly FileStream ownership;
    private readonly string announcement;

    private FolderLock(FileStream held, string addressFile) => (ownership, announcement) = (held, addressFile);

    /// <summary>Makes the folder when it is not there, for its owner only.</summary>
    /// <exception cref="StoreTrouble">Another process holds it, or it cannot be written.</exception>
    public static FolderLock Take(string folder) => Diagnosis.Naming(folder, () =>
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        var addressFile = Path.Combine(folder, "workspace.address");
        try
        {
            var held = new FileStream(Path.Combine(folder, "workspace.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            File.Delete(addressFile);
            return new FolderLock(held, addressFile);
        }
        catch (IOException fault) when ((fault.HResult & 0xFFFF) is LinuxWouldBlock or MacWouldBlock or WindowsSharingViolation)
        {
            throw InUse(folder, addressFile, fault);
        }
    });

    /// <summary>Says where this process can be reached; whole or not at all, since others may be reading.</summary>
    public void Announce(Uri address) => Diagnosis.Naming(announcement, () =>
    {
        File.WriteAllLines(announcement + ".partial", [address.AbsoluteUri, Environment.ProcessId.ToString(CultureInfo.InvariantCulture)]);
        File.Move(announcement + ".partial", announcement, overwrite: true);
    });

    public void Dispose()
    {
        DatabaseFile.DeleteQuietly(announcement);
        ownership.Dispose();
    }

    private static StoreTrouble InUse(string folder, string addressFile, IOException fault)
    {
        string[] lines;
        try { lines = File.ReadAllLines(addressFile); }
        catch (Exception unread) when (unread is IOException or UnauthorizedAccessException) { lines = []; }
        var address = lines is [var first, ..] && Uri.TryCreate(first, UriKind.Absolute, out var read) ? read : null;
        var where = address is null ? "that is starting or has no address" : $"at {address} (process {lines.ElementAtOrDefault(1) ?? "unknown"})";
        return new StoreTrouble(StoreTroubleKind.InUse, folder,
            $"{folder} is in use by the Seasonwright {where}. Nothing was changed. Use that one, close it first, or choose another folder with --data DIR.", fault)
        { RunningAt = address };
    }
}
