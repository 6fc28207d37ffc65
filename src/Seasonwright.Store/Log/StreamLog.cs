using System.Collections.Immutable;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.People;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.Log;

/// <summary>
/// The log of one club: the truth from which everything else follows. It only grows; the one exception is <see cref="RemoveAsync"/>.
/// Safe to use from many threads. Every member throws <see cref="StoreTrouble"/> when the disk or the file refuses.
/// </summary>
public sealed class StreamLog
{
    private readonly Database database;
    private readonly ClubId club;
    private readonly TimeProvider clock;

    internal StreamLog(Database database, ClubId club, TimeProvider clock) =>
        (this.database, this.club, this.clock) = (database, club, clock);

    /// <summary>Appends a gesture. When this returns <see cref="AppendOutcome.Appended"/> the entries are on the disk.</summary>
    /// <exception cref="ArgumentException">The request names a stream nobody made, or expects a tail beyond the real one.</exception>
    public Task<AppendOutcome> AppendAsync(AppendRequest request, CancellationToken cancel = default) => database.Run(async context =>
    {
        try
        {
            if (await Insert(context, request, cancel) is { } appended) return appended;
        }
        // The keys have the last word, also on a database that lets two writers in at once.
        catch (DbUpdateException fault) when (fault.InnerException is SqliteException { SqliteErrorCode: SqliteCode.Constraint })
        {
            return await WhyNot(context, request, cancel) ?? throw new InvalidOperationException("The log refused an entry that fits.", fault);
        }
        return await WhyNot(context, request, cancel) ?? throw new ArgumentException("The request expects a tail beyond the real one.", nameof(request));
    });

    /// <summary>Entries with a number above <paramref name="after"/>, in order; none for a stream that is not there.</summary>
    public Task<ImmutableArray<LogEntry>> ReadFromAsync(StreamId stream, long after, CancellationToken cancel = default) =>
        database.Run(context => Entries(context, stream).Where(entry => entry.Number > after).Ordered(cancel));

    /// <summary>The whole stream in order.</summary>
    public Task<ImmutableArray<LogEntry>> ReadAllAsync(StreamId stream, CancellationToken cancel = default) => ReadFromAsync(stream, 0, cancel);

    /// <summary>The entries a gesture made in a stream; empty when it is not there. Ask before deciding an edit that may have been sent again.</summary>
    public Task<ImmutableArray<LogEntry>> FindGestureAsync(StreamId stream, Guid gesture, CancellationToken cancel = default) =>
        database.Run(context => Entries(context, stream).Where(entry => entry.Gesture == gesture).Ordered(cancel));

    /// <summary>Every stream of the club, oldest first.</summary>
    public Task<ImmutableArray<LogStream>> StreamsAsync(CancellationToken cancel = default) => database.Run(async context =>
        (await context.Streams.AsNoTracking().Where(stream => stream.Club == club)
            .OrderBy(stream => stream.Created).ThenBy(stream => stream.Id).ToListAsync(cancel)).ToImmutableArray());

    /// <summary>
    /// Removes a stream for good, and with a team its seasons, leaving tombstones. The only delete there is.
    /// Removing what was removed before changes nothing. Not undoable: ask first.
    /// </summary>
    /// <param name="by">Person id.</param>
    public Task RemoveAsync(StreamId stream, string by, CancellationToken cancel = default) => database.Run(async context =>
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        var going = await context.Streams.AsNoTracking()
            .Where(row => row.Club == club && (row.Id == stream || row.Team == stream)).ToListAsync(cancel);
        var now = clock.GetUtcNow();
        foreach (var row in going)
            context.Removals.Add(new Removal(club, row.Id, row.Kind, row.Team, by, now, await Tail(context, row.Id, cancel)));
        // The tombstones come first: the database lets entries go only once they stand.
        await context.SaveChangesAsync(cancel);
        foreach (var row in going.OrderBy(row => row.Id == stream))
        {
            await context.Snapshots.Where(snapshot => snapshot.Club == club && snapshot.Stream == row.Id).ExecuteDeleteAsync(cancel);
            await Entries(context, row.Id).ExecuteDeleteAsync(cancel);
            await context.Streams.Where(other => other.Club == club && other.Id == row.Id).ExecuteDeleteAsync(cancel);
        }
        await AthleteRegister.EraseTeamlessAsync(context, club, cancel);
        await transaction.CommitAsync(cancel);
        return going.Count;
    });

    private IQueryable<LogEntry> Entries(StoreContext context, StreamId stream) =>
        context.Entries.AsNoTracking().Where(entry => entry.Club == club && entry.Stream == stream);

    /// <summary>Number of the last entry; 0 when there is none.</summary>
    private async Task<long> Tail(StoreContext context, StreamId stream, CancellationToken cancel) =>
        await Entries(context, stream).MaxAsync(entry => (long?)entry.Number, cancel) ?? 0;

    /// <summary>Null, with nothing written, when a tail is not where the request expects it.</summary>
    private async Task<AppendOutcome?> Insert(StoreContext context, AppendRequest request, CancellationToken cancel)
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        var now = clock.GetUtcNow();
        foreach (var append in request.Streams)
        {
            if (await Tail(context, append.Stream, cancel) != append.After) return null;
            if (append.Creates is { } birth)
                context.Streams.Add(new LogStream(club, append.Stream, birth.Kind, birth.Title, now, birth.Team));
            else if (!await context.Streams.AnyAsync(row => row.Club == club && row.Id == append.Stream, cancel))
                return null;
            context.Entries.AddRange(append.Entries.Select((entry, index) => new LogEntry(
                club, append.Stream, append.After + 1 + index, request.Gesture, index, request.Author, now,
                entry.WireVersion, entry.EditJson, entry.StepJson, entry.HashAfter, append.Undoes, append.Redoes)));
        }
        await context.SaveChangesAsync(cancel);
        foreach (var append in request.Streams.Where(append => append.Title is not null))
            await context.Streams.Where(row => row.Club == club && row.Id == append.Stream)
                .ExecuteUpdateAsync(row => row.SetProperty(stream => stream.Title, append.Title), cancel);
        await transaction.CommitAsync(cancel);
        return new AppendOutcome.Appended([.. context.Entries.Local]);
    }

    private async Task<AppendOutcome?> WhyNot(StoreContext context, AppendRequest request, CancellationToken cancel)
    {
        var streams = request.Streams.Select(append => append.Stream).ToList();
        var first = ImmutableArray.CreateBuilder<LogEntry>();
        var since = ImmutableArray.CreateBuilder<LogEntry>();
        foreach (var append in request.Streams)
        {
            first.AddRange(await Entries(context, append.Stream).Where(entry => entry.Gesture == request.Gesture).Ordered(cancel));
            since.AddRange(await Entries(context, append.Stream).Where(entry => entry.Number > append.After).Ordered(cancel));
        }
        if (first.Count > 0) return new AppendOutcome.AlreadyThere(first.ToImmutable());

        var touched = streams.Concat(request.Streams.Select(append => append.Creates?.Team).OfType<StreamId>()).ToList();
        var removal = await context.Removals.AsNoTracking()
            .Where(row => row.Club == club && touched.Contains(row.Stream)).OrderBy(row => row.Stream).FirstOrDefaultAsync(cancel);
        if (removal is not null) return new AppendOutcome.Gone(removal);
        if (since.Count > 0) return new AppendOutcome.Behind(since.ToImmutable());

        var known = await context.Streams.AsNoTracking().Where(row => row.Club == club).Select(row => row.Id).ToListAsync(cancel);
        var unknown = request.Streams.FirstOrDefault(append => append.Creates is null && !known.Contains(append.Stream));
        return unknown is null ? null : throw new ArgumentException($"Nobody made the stream {unknown.Stream}.", nameof(request));
    }
}
