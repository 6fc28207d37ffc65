using Microsoft.Data.Sqlite;

namespace Seasonwright.Store.Tests;

/// <summary>Plain SQLite beside the store, for what another program might do to the file.</summary>
internal static class Sql
{
    public static SqliteConnection Open(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }

    public static void Run(string file, string sql)
    {
        using var connection = Open(file);
        Run(connection, sql);
    }

    public static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public static string Ask(string file, string sql)
    {
        using var connection = Open(file);
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture) ?? "";
    }
}
