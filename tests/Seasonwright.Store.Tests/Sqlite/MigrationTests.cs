using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;

namespace Seasonwright.Store.Tests;

public sealed class MigrationTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    public static TheoryData<string> Older()
    {
        using var database = new Sqlite.Database(":memory:");
        using var context = database.Context();
        return [.. context.Database.GetMigrations().SkipLast(1)];
    }

    [Fact]
    public async Task The_tables_are_those_the_code_means()
    {
        using var folder = await place.OpenAsync();
        using var database = new Sqlite.Database(place.Database);
        await using var context = database.Context();
        Assert.False(context.Database.HasPendingModelChanges(), "A table changed in the code; add a migration for it.");
        Assert.Empty(await context.Database.GetPendingMigrationsAsync());
        Assert.False(Directory.Exists(Path.Combine(place.Data, "backups")), "A new folder has nothing to copy.");
    }

    [Theory]
    [MemberData(nameof(Older))]
    public async Task An_older_database_is_copied_then_brought_up_to_date_with_all_it_held(string schema)
    {
        await Make(schema);
        string said;
        using (var folder = await place.OpenAsync())
        {
            said = await Sample.Said(folder);
            Assert.Contains("from the old days", said, StringComparison.Ordinal);
            Assert.True((await folder.People.LocalAsync()).IsLocal);
            await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Team, 1, "goes on")));
        }

        var copy = Assert.Single(Directory.GetFiles(Path.Combine(place.Data, "backups")));
        Assert.Contains("-before-", copy, StringComparison.Ordinal);
        Assert.Equal(schema, Sql.Ask(copy, "SELECT MAX(MigrationId) FROM __EFMigrationsHistory"));

        Assert.Null(Restore.From(copy, place.In("second"), TimeProvider.System));
        Assert.Equal(said, await place.SaidAsync("second"));
    }

    /// <summary>An absence told before days could be told apart is the same on each of its days.</summary>
    [Fact]
    public async Task An_absence_from_before_days_were_told_apart_is_read_as_it_was_told()
    {
        await Make("20261128055626_Athletes");
        Sql.Run(place.Database, """
            INSERT INTO athletes (club_id, person_id, family, given, positions, created_utc) SELECT club_id, 'ysolde', 'Varnum', 'Ysolde', '', 1 FROM streams;
            INSERT INTO memberships (club_id, person_id, team_stream_id, squad, from_day, lead_weekdays, lead_dates) SELECT club_id, 'ysolde', stream_id, '', '2027-07-05', '', '' FROM streams;
            INSERT INTO absences (club_id, absence_id, person_id, kind, first_day, last_day, minutes, rpe, recorded_utc)
            SELECT club_id, '0198F300-0000-7000-8000-0000000000A2', 'ysolde', 'NationalTeam', '2027-10-25', '2027-10-31', 90, '6.5', 1 FROM streams;
            """);
        using var folder = await place.OpenAsync();
        var file = Assert.Single(await folder.Athletes.OfAsync(Sample.Team));
        Assert.Equal(OutsideLoads.Of(OutsideLoad.Of(new Minutes(90), new Rpe(6.5m))), Assert.Single(file.Absences).Loads);
        Assert.Empty(file.Groups);
    }

    [Fact]
    public async Task A_folder_that_is_up_to_date_is_not_copied_again()
    {
        await place.FillAsync();
        using var folder = await place.OpenAsync();
        Assert.False(Directory.Exists(Path.Combine(place.Data, "backups")));
    }

    [Fact]
    public async Task A_migration_lock_left_by_a_killed_process_does_not_stop_the_next()
    {
        await Make(Older().First().Data);
        Sql.Run(place.Database, """
            CREATE TABLE IF NOT EXISTS __EFMigrationsLock (Id INTEGER NOT NULL CONSTRAINT PK___EFMigrationsLock PRIMARY KEY, Timestamp TEXT NOT NULL);
            INSERT INTO __EFMigrationsLock VALUES (1, '2026-01-01');
            """);
        Assert.Contains("from the old days", await place.SaidAsync(), StringComparison.Ordinal);
    }

    /// <summary>A database as a program of that time would have left it, with a team in it.</summary>
    private async Task Make(string schema)
    {
        Directory.CreateDirectory(place.Data);
        using var database = new Sqlite.Database(place.Database);
        await using var context = database.Context();
        await context.GetService<IMigrator>().MigrateAsync(schema);
        Sql.Run(place.Database, $$"""
            INSERT INTO streams (club_id, stream_id, kind, title, created_utc)
            VALUES ('{{Log.ClubId.Local.Value.ToString().ToUpperInvariant()}}', '{{Sample.Team.ToString().ToUpperInvariant()}}', 'Team', 'Harbour Vale', 1);
            INSERT INTO log_entries (club_id, stream_id, number, gesture_id, index_in_gesture, author, instant_utc, wire_version, edit_json, step_json, hash_after)
            SELECT club_id, stream_id, 1, '0198F300-0000-7000-8000-0000000000FF', 0, 'coach', 1, 1, '{"edit":"from the old days"}', '{}', 'hash' FROM streams;
            """);
    }
}
