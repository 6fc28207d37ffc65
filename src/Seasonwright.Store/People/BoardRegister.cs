using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Core.Seasons;
using Seasonwright.Store.Log;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.People;

/// <summary>What was tapped at the boards of sessions. Rows that are only ever added; they go with the person and with the season. Every member throws <see cref="StoreTrouble"/> when the disk or the file refuses.</summary>
public sealed class BoardRegister
{
    private readonly Database database;
    private readonly ClubId club;
    private readonly TimeProvider clock;

    internal BoardRegister(Database database, ClubId club, TimeProvider clock) => (this.database, this.club, this.clock) = (database, club, clock);

    /// <summary>All marks of a session, as they were written, in order of coming in.</summary>
    public Task<ImmutableArray<string>> OfAsync(StreamId season, SessionId session, CancellationToken cancel = default) => database.Run(async context =>
        (await context.BoardMarks.AsNoTracking().Where(row => row.Club == club && row.Season == season && row.Session == session.Text).OrderBy(row => row.Received).ThenBy(row => row.Id).Select(row => row.Mark).ToListAsync(cancel))
            .ToImmutableArray());

    /// <summary>How many marks a session has.</summary>
    public Task<int> CountAsync(StreamId season, SessionId session, CancellationToken cancel = default) => database.Run(context =>
        context.BoardMarks.CountAsync(row => row.Club == club && row.Season == season && row.Session == session.Text, cancel));

    /// <summary>Keeps marks, all or none; those whose id is there already change nothing. Marks about people who are not in the file any more are let go.</summary>
    /// <returns>False, with nothing written, where the season is not there.</returns>
    public Task<bool> AppendAsync(StreamId season, SessionId session, IReadOnlyCollection<(Guid Id, PersonId? About, string Mark)> marks, CancellationToken cancel = default) => database.Run(async context =>
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        if (!await context.Streams.AnyAsync(stream => stream.Club == club && stream.Id == season, cancel)) return false;
        var ids = marks.Select(mark => mark.Id).ToList();
        var known = (await context.BoardMarks.Where(row => row.Club == club && ids.Contains(row.Id)).Select(row => row.Id).ToListAsync(cancel)).ToHashSet();
        var people = marks.Select(mark => mark.About?.Text).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var there = (await context.Athletes.Where(row => row.Club == club && people.Contains(row.Person)).Select(row => row.Person).ToListAsync(cancel)).ToHashSet(StringComparer.Ordinal);
        var now = clock.GetUtcNow();
        context.BoardMarks.AddRange(marks.DistinctBy(mark => mark.Id).Where(mark => !known.Contains(mark.Id) && (mark.About is not { } person || there.Contains(person.Text)))
            .Select(mark => new BoardMarkRow(club, mark.Id, season, session.Text, mark.About?.Text, mark.Mark, now)));
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return true;
    });
}
