using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Store.Log;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.People;

/// <summary>The squad list of each team, as it was read last. Not in the log, not undoable; erased with its team. Every member throws <see cref="StoreTrouble"/> when the disk or the file refuses.</summary>
public sealed class SquadRegister
{
    private readonly Database database;
    private readonly ClubId club;

    internal SquadRegister(Database database, ClubId club) => (this.database, this.club) = (database, club);

    /// <summary>A team's list in its order; empty for a team that has none or is not there.</summary>
    public Task<ImmutableArray<SquadMember>> OfAsync(StreamId team, CancellationToken cancel = default) => database.Run(async context =>
        (await Rows(context, team).AsNoTracking().OrderBy(row => row.Place).ToListAsync(cancel)).Select(row => row.Member).ToImmutableArray());

    /// <summary>Puts a list in the place of the one that was kept, whole or not at all.</summary>
    /// <returns>Whether it is kept: a team that is not there, or not any more, keeps none.</returns>
    public Task<bool> ReplaceAsync(StreamId team, IReadOnlyList<SquadMember> members, CancellationToken cancel = default) => database.Run(async context =>
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        // Erasing first takes the write lock, so that the team cannot go between the question and the rows.
        await Rows(context, team).ExecuteDeleteAsync(cancel);
        if (!await context.Streams.AnyAsync(row => row.Club == club && row.Id == team && row.Kind == StreamKind.Team, cancel)) return false;
        context.Squads.AddRange(members.Select((member, place) => new SquadPlace(club, team, place) { Member = member }));
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return true;
    });

    /// <summary>Erases a team's list, also from the file.</summary>
    public Task EraseAsync(StreamId team, CancellationToken cancel = default) => database.Run(context => Rows(context, team).ExecuteDeleteAsync(cancel));

    private IQueryable<SquadPlace> Rows(StoreContext context, StreamId team) => context.Squads.Where(row => row.Club == club && row.Team == team);
}
