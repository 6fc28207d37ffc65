using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.Log;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.People;

/// <summary>The people of one club. Every member throws <see cref="StoreTrouble"/> when the disk or the file refuses.</summary>
public sealed class PersonRegister
{
    private readonly Database database;
    private readonly ClubId club;
    private readonly TimeProvider clock;

    internal PersonRegister(Database database, ClubId club, TimeProvider clock) =>
        (this.database, this.club, this.clock) = (database, club, clock);

    /// <summary>The person at this machine, made as "You" at the first start.</summary>
    public Task<Person> LocalAsync(CancellationToken cancel = default) => database.Run(async context =>
    {
        var local = await context.People.AsNoTracking().FirstOrDefaultAsync(row => row.Club == club && row.IsLocal, cancel);
        if (local is not null) return local;
        var now = clock.GetUtcNow();
        local = new Person(club, Guid.CreateVersion7(now).ToString("D"), "You", now, IsLocal: true);
        context.People.Add(local);
        await context.SaveChangesAsync(cancel);
        return local;
    });

    /// <summary>Everyone, in order of coming.</summary>
    public Task<ImmutableArray<Person>> AllAsync(CancellationToken cancel = default) => database.Run(async context =>
        (await context.People.AsNoTracking().Where(row => row.Club == club)
            .OrderBy(row => row.Created).ThenBy(row => row.Id).ToListAsync(cancel)).ToImmutableArray());

    /// <summary>Writes a person under an id the caller minted; the same id again changes the name.</summary>
    public Task PutAsync(string id, string displayName, CancellationToken cancel = default) =>
        database.Run(context => context.Database.ExecuteSqlAsync($"""
            INSERT INTO people (club_id, person_id, display_name, created_utc, is_local)
            VALUES ({club.Value}, {id}, {displayName}, {clock.GetUtcNow().UtcTicks}, {false})
            ON CONFLICT (club_id, person_id) DO UPDATE SET display_name = excluded.display_name
            """, cancel));

    /// <summary>Erases a person's row and preferences. The log keeps the bare id, which then stands for nobody.</summary>
    public Task EraseAsync(string id, CancellationToken cancel = default) =>
        database.Run(context => context.People.Where(row => row.Club == club && row.Id == id && !row.IsLocal).ExecuteDeleteAsync(cancel));
}
