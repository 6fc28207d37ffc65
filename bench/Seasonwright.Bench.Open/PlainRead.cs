using Microsoft.Data.Sqlite;

namespace Seasonwright.Bench.Open;

/// <summary>What opening is compared with: the longest stream's rows read with plain SQLite, nothing made of them.</summary>
internal static class PlainRead
{
    /// <returns>Rows read.</returns>
    public static long Run(string folder)
    {
        using var connection = Connect(folder);
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT * FROM log_entries
            WHERE stream_id = (SELECT stream_id FROM log_entries GROUP BY stream_id ORDER BY COUNT(*) DESC LIMIT 1) ORDER BY number
            """;
        using var reader = command.ExecuteReader();
        var values = new object[reader.FieldCount];
        var rows = 0L;
        while (reader.Read())
        {
            reader.GetValues(values);
            rows++;
        }
        return rows;
    }

    public static int DiscardSnapshots(string folder)
    {
        using var connection = Connect(folder);
        using var command = connection.CreateCommand();
        command.CommandText = "DELETE FROM snapshots";
        return command.ExecuteNonQuery() > 0 ? 0 : 1;
    }

    private static SqliteConnection Connect(string folder)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path.Combine(folder, "seasonwright.db"), Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
