using Seasonwright.Store;

namespace Seasonwright.Desk;

/// <summary>What came of copying a data folder into a file or back.</summary>
/// <param name="Folder">The data folder, in full.</param>
/// <param name="Trouble">What stood in the way and how to mend it; null when it was done.</param>
/// <param name="InUse">The trouble is that a running workspace holds the folder.</param>
/// <param name="Kept">Where a restore kept what the folder held before; null when there was nothing.</param>
public sealed record DataCopy(string Folder, string? Trouble = null, bool InUse = false, string? Kept = null)
{
    /// <summary>Copies everything the folder keeps into one file, also while the workspace is running.</summary>
    /// <param name="folder">Null for the user's own data folder.</param>
    public static DataCopy BackUp(string? folder, string file) => Tried(folder, full =>
    {
        Backup.Write(full, file);
        return null;
    });

    /// <summary>Puts a backup in the folder's place; what it held is kept beside it.</summary>
    /// <param name="folder">Null for the user's own data folder.</param>
    public static DataCopy Restore(string file, string? folder, TimeProvider clock) => Tried(folder, full => Store.Restore.From(file, full, clock));

    private static DataCopy Tried(string? folder, Func<string, string?> copy)
    {
        try
        {
            folder = Path.GetFullPath(folder ?? DataFolder.Default);
            return new DataCopy(folder, Kept: copy(folder));
        }
        catch (StoreTrouble trouble)
        {
            return new DataCopy(folder ?? "", trouble.Message, trouble.Kind == StoreTroubleKind.InUse);
        }
    }
}
