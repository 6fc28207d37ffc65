using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Seasonwright.Store.Sqlite;

/// <summary>
/// What SQLite must promise on every connection. With a write-ahead log only <c>synchronous=FULL</c> flushes each commit
/// (NORMAL may lose the last ones at a power cut); on macOS a flush reaches the platter only with the two <c>fullfsync</c>.
/// <c>secure_delete</c> overwrites what is erased. Source: sqlite.org, "PRAGMA Statements".
/// </summary>
internal sealed class ConnectionPragmas : DbConnectionInterceptor
{
    public const string Sql =
        "PRAGMA busy_timeout=5000; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA fullfsync=ON; " +
        "PRAGMA checkpoint_fullfsync=ON; PRAGMA foreign_keys=ON; PRAGMA secure_delete=ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Sql;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Sql;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
