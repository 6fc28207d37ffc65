using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store;

/// <summary>Copies everything a data folder keeps into one file, also while the workspace is running.</summary>
public static class Backup
{
    /// <summary>Writes a checked copy; the file gets its name only when it is whole and on the disk, and replaces one of that name.</summary>
    /// <exception cref="StoreTrouble">The folder has no database of ours, or the file cannot be written there.</exception>
    public static void Write(string dataFolder, string file)
    {
        var database = Path.Combine(Path.GetFullPath(dataFolder), DatabaseFile.Name);
        file = Path.GetFullPath(file);
        if (DataFolder.MigrationsIn(database) == 0)
            throw new StoreTrouble(StoreTroubleKind.Unreachable, database, $"There is nothing to back up at {database}. Name the data folder with --data DIR.");
        if (file.StartsWith(database, StringComparison.OrdinalIgnoreCase))
            throw new StoreTrouble(StoreTroubleKind.Unreachable, file, $"{file} is the database itself. Nothing was changed. Choose another name for the backup.");
        if (Directory.Exists(file) || !OperatingSystem.IsWindows() && file.StartsWith("/dev/", StringComparison.Ordinal) && !file.StartsWith("/dev/shm/", StringComparison.Ordinal))
            throw new StoreTrouble(StoreTroubleKind.Unreachable, file, $"{file} is no file. Nothing was changed. Name a file for the backup.");
        DatabaseFile.Copy(database, file);
    }
}
