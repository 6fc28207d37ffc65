using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.Log;

/// <summary>Values of streams kept to open faster. All of it may be thrown away at any time.</summary>
public sealed class Snapshots
{
    private readonly Database database;
    private readonly ClubId club;

    internal Snapshots(Database database, ClubId club) => (this.database, this.club) = (database, club);

    /// <summary>Keeps the value of a stream after entry <paramref name="number"/>; replaces what was kept for that number.</summary>
    /// <exception cref="StoreTrouble">Also <see cref="StoreTroubleKind.Busy"/>: a snapshot is a help, losing one costs only time.</exception>
    public Task KeepAsync(StreamId stream, long number, int wireVersion, string json, string hash, CancellationToken cancel = default) =>
        database.Run(context => context.Database.ExecuteSqlAsync($"""
            INSERT INTO snapshots (club_id, stream_id, number, wire_version, json, hash)
            SELECT club_id, stream_id, {number}, {wireVersion}, {json}, {hash} FROM streams WHERE club_id = {club.Value} AND stream_id = {stream.Value}
            ON CONFLICT (club_id, stream_id, number) DO UPDATE SET wire_version = excluded.wire_version, json = excluded.json, hash = excluded.hash
            """, cancel));

    /// <summary>The newest snapshot at or before <paramref name="upTo"/>; null when there is none and the log is read from the start.</summary>
    public Task<Snapshot?> NewestAsync(StreamId stream, long upTo = long.MaxValue, CancellationToken cancel = default) =>
        database.Run(context => context.Snapshots.AsNoTracking()
            .Where(row => row.Club == club && row.Stream == stream && row.Number <= upTo)
            .OrderByDescending(row => row.Number).FirstOrDefaultAsync(cancel));

    /// <summary>Throws away every snapshot of a stream, as after a hash that does not fit.</summary>
    public Task DiscardAsync(StreamId stream, CancellationToken cancel = default) =>
        database.Run(context => context.Snapshots.Where(row => row.Club == club && row.Stream == stream).ExecuteDeleteAsync(cancel));
}
