using Microsoft.Data.Sqlite;

namespace Seasonwright.Store.Sqlite;

/// <summary>Turns what SQLite and the file system report into a sentence for people.</summary>
internal static class Diagnosis
{
    // errno on Linux and macOS, and the low word of the HResult on Windows.
    private const int NoSpace = 28, ReadOnlyFileSystem = 30, WindowsDiskFull = 112, WindowsWriteProtected = 19;

    /// <summary>False when the fault is none of the disk's or the file's: then it is ours, and goes on as it is.</summary>
    public static bool Covers(Exception fault) => Read(fault, "") is not null;

    /// <param name="subject">The file or folder the sentence is to name.</param>
    public static StoreTrouble Of(Exception fault, string subject) => Read(fault, subject) ?? throw new ArgumentException("Ask Covers first.", nameof(fault));

    /// <summary>Does the work; what goes wrong with the disk or the file names <paramref name="subject"/>.</summary>
    public static T Naming<T>(string subject, Func<T> work)
    {
        try { return work(); }
        catch (Exception fault) when (Covers(fault)) { throw Of(fault, subject); }
    }

    public static void Naming(string subject, Action work) => Naming(subject, () => { work(); return true; });

    private static StoreTrouble? Read(Exception fault, string subject) => fault switch
    {
        StoreTrouble => null,
        SqliteException sqlite => Read(sqlite, subject),
        _ when fault.InnerException is SqliteException sqlite => Read(sqlite, subject),
        UnauthorizedAccessException => ReadOnly(fault, subject),
        IOException io => (io.HResult & 0xFFFF) switch
        {
            NoSpace or WindowsDiskFull => Full(fault, subject),
            ReadOnlyFileSystem or WindowsWriteProtected => ReadOnly(fault, subject),
            _ => Unreachable(fault, subject),
        },
        // A value in the file that we never wrote: no id, no instant, or nothing where there must be something.
        FormatException or InvalidCastException or OverflowException => Damaged(fault, subject),
        InvalidOperationException when fault.Message.Contains("NULL at ordinal", StringComparison.Ordinal) => Damaged(fault, subject),
        _ => null,
    };

    private static StoreTrouble? Read(SqliteException fault, string subject) => fault.SqliteErrorCode switch
    {
        SqliteCode.Full => Full(fault, subject),
        SqliteCode.ReadOnly => ReadOnly(fault, subject),
        SqliteCode.InputOutput => new(StoreTroubleKind.DiskError, subject,
            $"The disk reported an error at {subject} (SQLite {fault.SqliteExtendedErrorCode}). It may be full, failing or unplugged. This change was not saved; what was saved before is unharmed. Check the disk and try again.", fault),
        // Nothing we write breaks a constraint, save an append that was overtaken, which sees to itself: an index does not fit its table.
        // Our statements are fixed and tested: what they do not find, or cannot make sense of, was taken from the file or altered in it.
        SqliteCode.Corrupt or SqliteCode.Constraint or SqliteCode.Error => Damaged(fault, subject),
        SqliteCode.NotADatabase => new(StoreTroubleKind.NotOurs, subject,
            $"{subject} is not a Seasonwright database. Nothing was changed. Choose another folder or file, or restore a backup.", fault),
        SqliteCode.Busy or SqliteCode.Locked => new(StoreTroubleKind.Busy, subject,
            $"Another program is holding {subject}. Nothing was changed. Close that program (a backup or synchronising tool, perhaps) and try again.", fault),
        SqliteCode.CannotOpen => Unreachable(fault, subject),
        _ => null,
    };

    private static StoreTrouble Damaged(Exception fault, string subject) => new(StoreTroubleKind.Damaged, subject,
        $"{subject} is damaged. Nothing was changed. Restore the newest backup; the 'backups' folder beside it may hold one.", fault);

    private static StoreTrouble Full(Exception fault, string subject) => new(StoreTroubleKind.DiskFull, subject,
        $"The disk that holds {subject} is full. This change was not saved; what was saved before is unharmed. Free some room and try again.", fault);

    private static StoreTrouble ReadOnly(Exception fault, string subject) => new(StoreTroubleKind.ReadOnly, subject,
        $"{subject} cannot be written: it is read-only, or belongs to somebody else. Nothing was changed. Allow writing there or choose another folder with --data DIR.", fault);

    private static StoreTrouble Unreachable(Exception fault, string subject) => new(StoreTroubleKind.Unreachable, subject,
        $"{subject} cannot be opened ({fault.Message.TrimEnd('.')}). Nothing was changed. Check that it exists and that you may read and write it.", fault);
}
