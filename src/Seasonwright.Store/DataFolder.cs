using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.Log;
using Seasonwright.Store.People;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store;

/// <summary>
/// The folder that holds everything a club keeps: many teams, many seasons, one database. Open in one process at a time.
/// Beside the database it holds <c>backups/</c> (copies made before each migration and each restore) and the lock.
/// </summary>
public sealed class DataFolder : IDisposable
{
    private readonly FolderLock ownership;
    private readonly Database keeping;

    private DataFolder(string path, FolderLock held, Database database, TimeProvider clock)
    {
        (Path, ownership, keeping) = (path, held, database);
        Log = new StreamLog(database, ClubId.Local, clock);
        Snapshots = new Snapshots(database, ClubId.Local);
        People = new PersonRegister(database, ClubId.Local, clock);
        Preferences = new Preferences(database, ClubId.Local);
        Squads = new SquadRegister(database, ClubId.Local);
        Athletes = new AthleteRegister(database, ClubId.Local, clock);
        Boards = new BoardRegister(database, ClubId.Local, clock);
    }

    /// <summary>Where the data lives when nobody says otherwise: <c>Seasonwright</c> in the user's data folder of this system.</summary>
    /// <exception cref="StoreTrouble">The account has no such folder.</exception>
    public static string Default
    {
        get
        {
            var home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
            return home.Length > 0 ? System.IO.Path.Combine(home, "Seasonwright")
                : throw new StoreTrouble(StoreTroubleKind.Unreachable, "the user's data folder",
                    "This account has no folder for programs' data. Nothing was changed. Choose a folder with --data DIR.");
        }
    }

    /// <summary>Full path.</summary>
    public string Path { get; }

    public StreamLog Log { get; }

    public Snapshots Snapshots { get; }

    public PersonRegister People { get; }

    /// <summary>The person at this machine.</summary>
    public Person Local { get; private set; } = null!;

    public Preferences Preferences { get; }

    public SquadRegister Squads { get; }

    public AthleteRegister Athletes { get; }

    public BoardRegister Boards { get; }

    /// <summary>Opens the folder, made new when missing; brings an older database up to date after copying it into <c>backups/</c>.</summary>
    /// <exception cref="StoreTrouble">The folder is in use or cannot be written; the database is not ours, newer or damaged. The database is as it was.</exception>
    public static async Task<DataFolder> OpenAsync(string path, TimeProvider clock, CancellationToken cancel = default)
    {
        path = System.IO.Path.GetFullPath(path);
        var held = FolderLock.Take(path);
        var database = new Database(System.IO.Path.Combine(path, DatabaseFile.Name));
        try
        {
            await BringUpToDate(path, database, clock, cancel);
            var folder = new DataFolder(path, held, database, clock);
            folder.Local = await folder.People.LocalAsync(cancel);
            return folder;
        }
        catch
        {
            database.Dispose();
            held.Dispose();
            throw;
        }
    }

    /// <summary>Tells a second process where this one can be reached. Call it when the door is open.</summary>
    public void Announce(Uri address) => ownership.Announce(address);

    public void Dispose()
    {
        keeping.Dispose();
        ownership.Dispose();
    }

    /// <summary>Path of a dated file in <c>backups/</c>, to the millisecond of UTC.</summary>
    internal static string BackupPath(string folder, TimeProvider clock, string reason)
    {
        var backups = System.IO.Path.Combine(folder, "backups");
        Diagnosis.Naming(backups, () => Directory.CreateDirectory(backups));
        return System.IO.Path.Combine(backups, FormattableString.Invariant($"seasonwright-{clock.GetUtcNow():yyyyMMdd'T'HHmmssfff'Z'}-{reason}.db"));
    }

    private static async Task BringUpToDate(string path, Database database, TimeProvider clock, CancellationToken cancel)
    {
        var known = KnownMigrations(database);
        var applied = DatabaseFile.MigrationsIn(database.File, known);
        if (applied.Length == known.Count) return;
        if (applied.Length > 0)
            DatabaseFile.Copy(database.File, BackupPath(path, clock, "before-" + known[applied.Length]));
        await database.Run(async context =>
        {
            // We hold the folder, so a migration lock in the database was left by a process that was killed; waiting for it would never end.
            await context.Database.ExecuteSqlRawAsync("DROP TABLE IF EXISTS __EFMigrationsLock", cancel);
            await context.Database.MigrateAsync(cancel);
            return true;
        });
    }

    private static IReadOnlyList<string> KnownMigrations(Database database)
    {
        using var context = database.Context();
        return [.. context.Database.GetMigrations()];
    }

    /// <inheritdoc cref="DatabaseFile.MigrationsIn"/>
    internal static int MigrationsIn(string file)
    {
        using var unopened = new Database(file);
        return DatabaseFile.MigrationsIn(file, KnownMigrations(unopened)).Length;
    }
}
