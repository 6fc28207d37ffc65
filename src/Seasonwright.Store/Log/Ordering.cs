using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;

namespace Seasonwright.Store.Log;

internal static class Ordering
{
    public static async Task<ImmutableArray<LogEntry>> Ordered(this IQueryable<LogEntry> entries, CancellationToken cancel) =>
        [.. await entries.OrderBy(entry => entry.Number).ToListAsync(cancel)];
}
