using System.Collections.Immutable;
using Microsoft.Data.Sqlite;

namespace Seasonwright.Store.Sqlite;

/// <summary>The database as a file: whose it is, what it has been through, how to copy it while others write. Leaves no connection open.</summary>
internal static class DatabaseFile
{
    public const string Name = "seasonwright.db";

    /// <summary>"SWrt"; the first migration writes it.</summary>
    private const long ApplicationId = 0x53577274;

    /// <summary>Ids of the migrations a file has been through, in order; none for a file that is missing or empty.</summary>
    /// <param name="known">The migrations this program has.</param>
    /// <exception cref="StoreTrouble">The file is not ours, newer, damaged or cannot be read. It was only read.</exception>
    public static ImmutableArray<string> MigrationsIn(string file, IEnumerable<string> known) => Diagnosis.Naming(file, () =>
    {
        if (!File.Exists(file)) return [];
        using var connection = Open(file, SqliteOpenMode.ReadOnly);
        if ((long)Scalar(connection, "PRAGMA application_id") != ApplicationId)
        {
            // A process ended during its very first start leaves at most the bookkeeping of the migrations.
            if ((long)Scalar(connection, "SELECT COUNT(*) FROM sqlite_schema WHERE name NOT GLOB '*__EFMigrations*'") == 0) return [];
            throw new StoreTrouble(StoreTroubleKind.NotOurs, file,
                $"{file} belongs to another program. Nothing was changed. Choose another folder or file.");
        }
        var applied = Rows(connection, "SELECT MigrationId FROM __EFMigrationsHistory ORDER BY MigrationId");
        if (applied.Except(known, StringComparer.Ordinal).Any())
            throw new StoreTrouble(StoreTroubleKind.Newer, file,
                $"{file} was written by a newer Seasonwright. Nothing was changed. Start the newer version, or restore a backup made with this one.");
        return applied;
    });

    /// <summary>Copies a database, also one in use, to a new file; checks the copy and brings it to the disk before its name appears.</summary>
    public static void Copy(string from, string to)
    {
        var partial = to + ".partial";
        try
        {
            Diagnosis.Naming(to, () =>
            {
                File.Delete(partial);
                using (var source = Diagnosis.Naming(from, () => Open(from, SqliteOpenMode.ReadOnly)))
                using (var copy = Open(partial, SqliteOpenMode.ReadWriteCreate))
                {
                    source.BackupDatabase(copy);
                    // One plain file that can be read from anywhere, also from a read-only disk.
                    Scalar(copy, "PRAGMA journal_mode=DELETE");
                }
                CheckIntegrity(partial, from);
                MoveDurably(partial, to);
            });
        }
        finally
        {
            DeleteQuietly(partial);
        }
    }

    /// <param name="named">The file the sentence is to name.</param>
    /// <exception cref="StoreTrouble"><see cref="StoreTroubleKind.Damaged"/> when SQLite's own full check finds anything.</exception>
    public static void CheckIntegrity(string file, string named) => Diagnosis.Naming(named, () =>
    {
        using var connection = Open(file, SqliteOpenMode.ReadOnly);
        if (Rows(connection, "PRAGMA integrity_check") is not ["ok"])
            throw new StoreTrouble(StoreTroubleKind.Damaged, named, $"{named} is damaged. Nothing was changed. Use another backup.");
    });

    /// <summary>Folds a write-ahead log that a killed process left behind into the file.</summary>
    public static void Fold(string file)
    {
        using var connection = Open(file, SqliteOpenMode.ReadWrite);
        Scalar(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
    }

    public static void MoveDurably(string from, string to)
    {
        using (var stream = new FileStream(from, FileMode.Open, FileAccess.ReadWrite)) stream.Flush(flushToDisk: true);
        File.Move(from, to, overwrite: true);
    }

    public static void DeleteQuietly(string file)
    {
        try { File.Delete(file); }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException) { /* a left-over, and the real trouble is already on its way */ }
    }

    private static SqliteConnection Open(string file, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        // A copy does not fail because somebody is just now writing.
        Scalar(connection, FormattableString.Invariant($"PRAGMA busy_timeout={Database.Patience * 1000}"));
        return connection;
    }

    private static object Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar()!;
    }

    private static ImmutableArray<string> Rows(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var rows = ImmutableArray.CreateBuilder<string>();
        while (reader.Read()) rows.Add(reader.GetString(0));
        return rows.ToImmutable();
    }
}
