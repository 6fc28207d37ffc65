using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store;

/// <summary>Puts a backup in a data folder's place. The workspace must not be running.</summary>
public static class Restore
{
    /// <summary>The backup is checked first; what the folder held is kept in <c>backups/</c>; the change-over is one rename.</summary>
    /// <returns>Where the former database was kept; null when there was none.</returns>
    /// <exception cref="StoreTrouble">The folder is in use, or the file is not ours, newer, damaged or unreadable. The folder's database is as it was.</exception>
    public static string? From(string file, string dataFolder, TimeProvider clock)
    {
        file = Path.GetFullPath(file);
        dataFolder = Path.GetFullPath(dataFolder);
        if (!File.Exists(file))
            throw new StoreTrouble(StoreTroubleKind.Unreachable, file, $"There is no file {file}. Nothing was changed. Check its name.");
        if (DataFolder.MigrationsIn(file) == 0)
            throw new StoreTrouble(StoreTroubleKind.NotOurs, file, $"{file} is empty. Nothing was changed. Choose a file that a backup wrote.");
        DatabaseFile.CheckIntegrity(file, file);

        using var held = FolderLock.Take(dataFolder);
        var database = Path.Combine(dataFolder, DatabaseFile.Name);
        var incoming = database + ".incoming";
        try
        {
            DatabaseFile.Copy(file, incoming);
            return Diagnosis.Naming(database, () =>
            {
                var kept = File.Exists(database) ? KeepAside(database, DataFolder.BackupPath(dataFolder, clock, "before-restore")) : null;
                DatabaseFile.MoveDurably(incoming, database);
                return kept;
            });
        }
        finally
        {
            DatabaseFile.DeleteQuietly(incoming);
        }
    }

    private static string KeepAside(string database, string kept)
    {
        var log = database + "-wal";
        try
        {
            DatabaseFile.Copy(database, kept);
            DatabaseFile.Fold(database);
        }
        catch (Exception fault) when (Unreadable(fault))
        {
            // Mending a broken database is what a restore is for: keep it byte for byte, with its write-ahead log.
            File.Copy(database, kept, overwrite: true);
            if (File.Exists(log)) File.Copy(log, kept + "-wal", overwrite: true);
        }
        // The old write-ahead log must not meet the new file; all it held is in the copy.
        File.Delete(log);
        File.Delete(database + "-shm");
        return kept;
    }

    private static bool Unreadable(Exception fault) =>
        (fault as StoreTrouble ?? (Diagnosis.Covers(fault) ? Diagnosis.Of(fault, "") : null))?.Kind is StoreTroubleKind.Damaged or StoreTroubleKind.NotOurs;
}
