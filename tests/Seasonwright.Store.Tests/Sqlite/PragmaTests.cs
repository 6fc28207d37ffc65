using Microsoft.EntityFrameworkCore;

namespace Seasonwright.Store.Tests;

/// <summary>What makes "acknowledged" mean "on the disk", read back from connections as the store itself opens them.</summary>
public sealed class PragmaTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")] // FULL; sqlite.org, "PRAGMA synchronous"
    [InlineData("fullfsync", "1")] // heeded on macOS only, set everywhere
    [InlineData("checkpoint_fullfsync", "1")]
    [InlineData("foreign_keys", "1")]
    [InlineData("secure_delete", "1")]
    public async Task Every_connection_makes_the_promise(string pragma, string value)
    {
        await place.FillAsync();
        using var database = new Sqlite.Database(place.Database);
        // Three at once are three connections; the second round gets them from the pool.
        for (var round = 0; round < 2; round++)
        {
            Sqlite.StoreContext[] contexts = [database.Context(), database.Context(), database.Context()];
            foreach (var context in contexts) await context.Database.OpenConnectionAsync();
            foreach (var context in contexts)
            {
                using var command = context.Database.GetDbConnection().CreateCommand();
                command.CommandText = $"PRAGMA {pragma}";
                Assert.Equal(value, Convert.ToString(await command.ExecuteScalarAsync(), System.Globalization.CultureInfo.InvariantCulture));
            }
            foreach (var context in contexts) await context.DisposeAsync();
        }
    }
}
