using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;
using Seasonwright.Store.Sqlite;

namespace Seasonwright.Store.People;

/// <summary>
/// The athletes of a club, the squads they are or were in, and what was told of each. Rows, never in the log, not undoable: erased with the
/// person, and with the last team the person was in. Every member throws <see cref="StoreTrouble"/> when the disk or the file refuses.
/// </summary>
public sealed class AthleteRegister
{
    private readonly Database database;
    private readonly ClubId club;
    private readonly TimeProvider clock;

    internal AthleteRegister(Database database, ClubId club, TimeProvider clock) => (this.database, this.club, this.clock) = (database, club, clock);

    /// <summary>Everybody who is or was in a team, in order of coming, with everything that was told of them.</summary>
    public Task<ImmutableArray<AthleteFile>> OfAsync(StreamId team, CancellationToken cancel = default) => database.Run(async context =>
    {
        var people = context.Memberships.Where(row => row.Club == club && row.Team == team).Select(row => row.Person);
        var athletes = await context.Athletes.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.Created).ThenBy(row => row.Person).ToListAsync(cancel);
        var memberships = (await context.Memberships.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.From).ThenBy(row => row.Squad).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var reports = (await context.Availabilities.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.Recorded).ThenBy(row => row.Id).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var absences = (await context.Absences.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.First).ThenBy(row => row.Id).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var masses = (await context.BodyMasses.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.Day).ThenBy(row => row.Recorded).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var lifts = (await context.LiftTests.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.Day).ThenBy(row => row.Recorded).ThenBy(row => row.Id).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var runs = (await context.RunTests.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.Day).ThenBy(row => row.Recorded).ThenBy(row => row.Id).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        var groups = (await context.Groups.AsNoTracking().Where(row => row.Club == club && people.Contains(row.Person)).OrderBy(row => row.From).ThenBy(row => row.Group).ToListAsync(cancel)).ToLookup(row => row.Person, StringComparer.Ordinal);
        // Who was erased between the questions has no membership.
        return athletes.Where(row => memberships[row.Person].Any()).Select(row => new AthleteFile(row.Value, [.. memberships[row.Person].Select(one => one.Value)], [.. reports[row.Person].Select(one => one.Value)],
            [.. absences[row.Person].Select(one => one.Value)], [.. masses[row.Person].Select(one => one.Value)], [.. lifts[row.Person].Select(one => one.Value)], [.. runs[row.Person].Select(one => one.Value)], [.. groups[row.Person].Select(one => one.Value)])).ToImmutableArray();
    });

    /// <summary>Adds people to a team or changes them, each with all their memberships of that team, whole or not at all. Their memberships of other teams stay.</summary>
    /// <param name="people">Each with at least one membership, all of this team.</param>
    /// <returns>False, with nothing written, where the team is not there, or not any more.</returns>
    /// <exception cref="ArgumentException">A person without a membership, or one of another person or team.</exception>
    public Task<bool> PutAsync(StreamId team, IReadOnlyList<(Athlete Athlete, IReadOnlyList<Membership> Memberships)> people, CancellationToken cancel = default)
    {
        if (people.Any(person => person.Memberships.Count == 0 || person.Memberships.Any(one => one.Person != person.Athlete.Id || one.Team.Text != team.ToString())))
            throw new ArgumentException("Each person comes with memberships of their own in this team.", nameof(people));
        return database.Run(async context =>
        {
            await using var transaction = await context.Database.BeginTransactionAsync(cancel);
            // After everybody who came before, also where the clock was set back.
            var newest = await context.Athletes.AsNoTracking().Where(row => row.Club == club).OrderByDescending(row => row.Created).FirstOrDefaultAsync(cancel);
            var now = clock.GetUtcNow() is var told && newest?.Created >= told ? newest.Created.AddTicks(1) : told;
            foreach (var ((athlete, memberships), place) in people.Select((person, place) => (person, place)))
            {
                // Erasing first takes the write lock, so that the team cannot go between the question and the rows.
                await context.Memberships.Where(row => row.Club == club && row.Team == team && row.Person == athlete.Id.Text).ExecuteDeleteAsync(cancel);
                // A tick apart, so that a list keeps its order.
                var row = AthleteRow.Of(club, athlete, now.AddTicks(place));
                if (await context.Athletes.AsNoTracking().FirstOrDefaultAsync(known => known.Club == club && known.Person == row.Person, cancel) is { } known) context.Athletes.Update(row with { Created = known.Created });
                else context.Athletes.Add(row);
                context.Memberships.AddRange(memberships.Select(one => MembershipRow.Of(club, team, one)));
            }
            if (!await context.Streams.AnyAsync(row => row.Club == club && row.Id == team && row.Kind == StreamKind.Team, cancel)) return false;
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
            return true;
        });
    }

    /// <summary>Puts a person's groups of a season in the place of those that were told, whole or not at all.</summary>
    /// <param name="places">All of this person and season, each group once.</param>
    /// <returns>False, with nothing written, where the person or the season is not there, or not any more.</returns>
    /// <exception cref="ArgumentException">A place of another person or season.</exception>
    public Task<bool> PutGroupsAsync(PersonId person, StreamId season, IReadOnlyList<GroupPlace> places, CancellationToken cancel = default)
    {
        if (places.Any(place => place.Person != person || place.Season.Text != season.ToString())) throw new ArgumentException("All places are of one person in one season.", nameof(places));
        return database.Run(async context =>
        {
            await using var transaction = await context.Database.BeginTransactionAsync(cancel);
            // Erasing first takes the write lock, so that neither can go between the question and the rows.
            await context.Groups.Where(row => row.Club == club && row.Season == season && row.Person == person.Text).ExecuteDeleteAsync(cancel);
            if (!await context.Athletes.AnyAsync(row => row.Club == club && row.Person == person.Text, cancel)
                || !await context.Streams.AnyAsync(row => row.Club == club && row.Id == season && row.Kind == StreamKind.Season, cancel)) return false;
            context.Groups.AddRange(places.Select(place => GroupRow.Of(club, season, place)));
            await context.SaveChangesAsync(cancel);
            await transaction.CommitAsync(cancel);
            return true;
        });
    }

    /// <summary>Keeps a report; the same id again changes nothing.</summary>
    /// <returns>False, with nothing written, where the person is not there.</returns>
    public Task<bool> AppendAsync(AvailabilityReport report, CancellationToken cancel = default) => Append(report.Person,
        context => context.Availabilities.AnyAsync(row => row.Club == club && row.Id == report.Id, cancel), context => context.Availabilities.Add(AvailabilityRow.Of(club, report)), cancel);

    /// <inheritdoc cref="AppendAsync(AvailabilityReport, CancellationToken)"/>
    public Task<bool> AppendAsync(Absence absence, CancellationToken cancel = default) => Append(absence.Person,
        context => context.Absences.AnyAsync(row => row.Club == club && row.Id == absence.Id, cancel), context => context.Absences.Add(AbsenceRow.Of(club, absence)), cancel);

    /// <inheritdoc cref="AppendAsync(AvailabilityReport, CancellationToken)"/>
    public Task<bool> AppendAsync(WeighIn weighing, CancellationToken cancel = default) => Append(weighing.Person,
        context => context.BodyMasses.AnyAsync(row => row.Club == club && row.Id == weighing.Id, cancel), context => context.BodyMasses.Add(BodyMassRow.Of(club, weighing)), cancel);

    /// <inheritdoc cref="AppendAsync(AvailabilityReport, CancellationToken)"/>
    public Task<bool> AppendAsync(LiftTest test, CancellationToken cancel = default) => Append(test.Person,
        context => context.LiftTests.AnyAsync(row => row.Club == club && row.Id == test.Id, cancel), context => context.LiftTests.Add(LiftTestRow.Of(club, test)), cancel);

    /// <inheritdoc cref="AppendAsync(AvailabilityReport, CancellationToken)"/>
    public Task<bool> AppendAsync(RunTest test, CancellationToken cancel = default) => Append(test.Person,
        context => context.RunTests.AnyAsync(row => row.Club == club && row.Id == test.Id, cancel), context => context.RunTests.Add(RunTestRow.Of(club, test)), cancel);

    /// <summary>A text that changes when something is told of people or taken back; what is only corrected in its place, a name, leaves it as it is.</summary>
    public Task<string> ToldAsync(CancellationToken cancel = default) => database.Run(async context => string.Join('-',
        await context.Memberships.CountAsync(row => row.Club == club, cancel),
        await context.Groups.CountAsync(row => row.Club == club, cancel),
        await context.Absences.CountAsync(row => row.Club == club, cancel),
        await context.Availabilities.CountAsync(row => row.Club == club, cancel),
        await context.BodyMasses.CountAsync(row => row.Club == club, cancel),
        await context.LiftTests.CountAsync(row => row.Club == club, cancel),
        await context.RunTests.CountAsync(row => row.Club == club, cancel)));

    /// <summary>Marks a report as confirmed by whoever made it. What it says stays.</summary>
    /// <returns>False where there is no such report of the person.</returns>
    public Task<bool> ConfirmAsync(PersonId person, Guid report, CancellationToken cancel = default) => database.Run(async context =>
        await context.Availabilities.Where(row => row.Club == club && row.Id == report && row.Person == person.Text).ExecuteUpdateAsync(row => row.SetProperty(one => one.IsConfirmed, true), cancel) > 0);

    /// <summary>Takes back an absence that was told by mistake, also from the file.</summary>
    public Task EraseAbsenceAsync(PersonId person, Guid absence, CancellationToken cancel = default) =>
        database.Run(context => context.Absences.Where(row => row.Club == club && row.Id == absence && row.Person == person.Text).ExecuteDeleteAsync(cancel));

    /// <summary>Takes back a tested set that was told by mistake, also from the file.</summary>
    public Task EraseLiftAsync(PersonId person, Guid test, CancellationToken cancel = default) =>
        database.Run(context => context.LiftTests.Where(row => row.Club == club && row.Id == test && row.Person == person.Text).ExecuteDeleteAsync(cancel));

    /// <summary>Takes back a running test that was told by mistake, also from the file.</summary>
    public Task EraseRunAsync(PersonId person, Guid test, CancellationToken cancel = default) =>
        database.Run(context => context.RunTests.Where(row => row.Club == club && row.Id == test && row.Person == person.Text).ExecuteDeleteAsync(cancel));

    /// <summary>Erases a person and everything told of them, also from the file.</summary>
    public Task EraseAsync(PersonId person, CancellationToken cancel = default) =>
        database.Run(context => context.Athletes.Where(row => row.Club == club && row.Person == person.Text).ExecuteDeleteAsync(cancel));

    /// <summary>Erases those who are in no team any more, and never will be.</summary>
    internal static Task<int> EraseTeamlessAsync(StoreContext context, ClubId club, CancellationToken cancel) => context.Athletes
        .Where(row => row.Club == club && !context.Memberships.Any(one => one.Club == club && one.Person == row.Person)).ExecuteDeleteAsync(cancel);

    private Task<bool> Append(PersonId person, Func<StoreContext, Task<bool>> isThere, Action<StoreContext> add, CancellationToken cancel) => database.Run(async context =>
    {
        await using var transaction = await context.Database.BeginTransactionAsync(cancel);
        if (!await context.Athletes.AnyAsync(row => row.Club == club && row.Person == person.Text, cancel)) return false;
        if (await isThere(context)) return true;
        add(context);
        await context.SaveChangesAsync(cancel);
        await transaction.CommitAsync(cancel);
        return true;
    });
}
