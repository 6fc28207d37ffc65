using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Seasonwright.Store.Sqlite;

/// <summary>The database file, opened for each piece of work from a pool of connections.</summary>
internal sealed class Database(string file) : IDisposable
{
    private static readonly ConnectionPragmas Pragmas = new();

    /// <summary>How long somebody else's lock is waited for, in seconds, before a person is told.</summary>
    public const int Patience = 10;

    private readonly DbContextOptions<StoreContext> options = new DbContextOptionsBuilder<StoreContext>().UseSqlite(Connection(file)).AddInterceptors(Pragmas).Options;

    public string File => file;

    public StoreContext Context() => new(options);

    /// <exception cref="StoreTrouble">The disk or the file refuses; an open transaction is rolled back.</exception>
    public async Task<T> Run<T>(Func<StoreContext, Task<T>> work)
    {
        try
        {
            await using var context = Context();
            return await work(context);
        }
        catch (Exception fault) when (Diagnosis.Covers(fault))
        {
            throw Diagnosis.Of(fault, file);
        }
    }

    /// <summary>Closes the pooled connections; the last one out folds the write-ahead log into the file.</summary>
    public void Dispose()
    {
        using var any = new SqliteConnection(Connection(file));
        SqliteConnection.ClearPool(any);
    }

    private static string Connection(string file) => new SqliteConnectionStringBuilder { DataSource = file, DefaultTimeout = Patience }.ToString();
}
