using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.Log;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.People;

/// <summary>Each person's settings: track order, folds. Not in the log, not undoable; the last write wins.</summary>
public sealed class Preferences
{
    private readonly Database database;
    private readonly ClubId club;

    internal Preferences(Database database, ClubId club) => (this.database, this.club) = (database, club);

    /// <summary>All settings of a person by key; empty for one who has none or is not there.</summary>
    public Task<ImmutableSortedDictionary<string, string>> OfAsync(string person, CancellationToken cancel = default) =>
        database.Run(async context => (await context.Preferences.AsNoTracking()
                .Where(row => row.Club == club && row.Person == person).ToListAsync(cancel))
            .ToImmutableSortedDictionary(row => row.Key, row => row.Json, StringComparer.Ordinal));

    /// <summary>Sets one key. Does nothing for a person who is not there: there is nobody to remember it for.</summary>
    public Task SetAsync(string person, string key, string json, CancellationToken cancel = default) =>
        database.Run(context => context.Database.ExecuteSqlAsync($"""
            INSERT INTO preferences (club_id, person_id, key, json)
            SELECT club_id, person_id, {key}, {json} FROM people WHERE club_id = {club.Value} AND person_id = {person}
            ON CONFLICT (club_id, person_id, key) DO UPDATE SET json = excluded.json
            """, cancel));

    /// <summary>Takes one key from everybody.</summary>
    public Task RemoveAsync(string key, CancellationToken cancel = default) =>
        database.Run(context => context.Preferences.Where(row => row.Club == club && row.Key == key).ExecuteDeleteAsync(cancel));
}
