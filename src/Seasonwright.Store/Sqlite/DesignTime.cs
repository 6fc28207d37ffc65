using Microsoft.EntityFrameworkCore.Design;

namespace Seasonwright.Store.Sqlite;

/// <summary>Lets <c>dotnet ef migrations add NAME --project src/Seasonwright.Store</c> see the tables; opens no file.</summary>
internal sealed class DesignTime : IDesignTimeDbContextFactory<StoreContext>
{
    public StoreContext CreateDbContext(string[] args) => new Database(":memory:").Context();
}
