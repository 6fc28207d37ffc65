using Microsoft.Data.Sqlite;
using Seasonwright.Core.Facts;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Tests.Streams;

/// <summary>Snapshots may always be thrown away, and a wrong one is never believed; a wrong log is never opened.</summary>
public class SnapshotTests
{
    private static async Task<(OpenSeason Open, FactSet Halfway)> LongAsync(Desk desk)
    {
        var open = await desk.SeasonAsync(await desk.StartAsync());
        for (var i = 0; i < 7; i++)
            await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, [.. Enumerable.Range(0, 32).Select(n => Desk.Load(1 + (n % 12), 500 + (100 * i) + n))]));
        var halfway = open.Season.Facts;
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 3000)));
        Assert.NotNull(await desk.Workspace.Folder.Snapshots.NewestAsync(open.Stream.Id));
        return (open, halfway);
    }

    public static TheoryData<string> Harms => new(
        "DELETE FROM snapshots",
        "UPDATE snapshots SET json = ''",
        "UPDATE snapshots SET json = '{'",
        "UPDATE snapshots SET json = 'null'",
        "UPDATE snapshots SET json = '{}'",
        "UPDATE snapshots SET json = '[1,2]'",
        "UPDATE snapshots SET json = replace(json, '\"week.load\"', '\"week.lood\"')",
        "UPDATE snapshots SET json = replace(json, ':1', ':-1')",
        "UPDATE snapshots SET hash = replace(hash, 'a', 'b')",
        "UPDATE snapshots SET number = number - 1",
        // Whole and consistent, but not what the log says stood there.
        $"UPDATE snapshots SET json = '{{}}', hash = '{FactHash.Of(FactSet.Empty).Hex}'");

    [Theory, MemberData(nameof(Harms))]
    public async Task Whatever_happens_to_snapshots_the_season_is_the_same(string harm)
    {
        await using var desk = await Desk.OpenAsync();
        var (open, halfway) = await LongAsync(desk);
        var number = open.Stream.State.Number;
        Run(desk, harm);
        // Looked back at while open, and opened again.
        Assert.Equal(halfway, await open.Stream.FactsAtAsync(number - 1));
        await desk.RestartAsync();
        var again = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(open.Season.Facts, again.Season.Facts);
        Assert.Equal(halfway, await again.Stream.FactsAtAsync(number - 1));
        Assert.IsType<Kept>(await again.Stream.ApplyAsync(desk.Runa, Desk.Gesture(again, Desk.Load(2, 1))));
        await desk.RestartAsync();
        Assert.Equal(1, Desk.Au(await desk.SeasonAsync(open.Season.Id), 2));
    }

    [Theory]
    [InlineData("UPDATE log_entries SET hash_after = replace(hash_after, '0', '1') WHERE number = 40")]
    [InlineData("UPDATE log_entries SET step_json = replace(step_json, '1', '2') WHERE number = 240")]
    [InlineData("UPDATE log_entries SET step_json = 'null' WHERE number = 240")]
    [InlineData("UPDATE log_entries SET step_json = '{' WHERE number = 240")]
    [InlineData("DELETE FROM log_entries WHERE number = 220")]
    public async Task A_log_that_does_not_give_what_it_gave_is_not_opened_and_says_how_to_go_on(string harm)
    {
        await using var desk = await Desk.OpenAsync();
        var (open, _) = await LongAsync(desk);
        Assert.True(open.Stream.State.Number > 220);
        if (harm.Contains("240", StringComparison.Ordinal)) for (var i = 0; i < 20; i++) await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(5, 100 + i)));
        Run(desk, "DROP TRIGGER log_entries_never_change");
        Run(desk, "DROP TRIGGER log_entries_go_only_with_a_tombstone");
        Run(desk, "DELETE FROM snapshots");
        Run(desk, harm);
        await desk.RestartAsync();
        for (var attempt = 0; attempt < 2; attempt++)
        {
            var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => desk.Workspace.SeasonAsync(open.Season.Id));
            Assert.Equal(StoreTroubleKind.Damaged, trouble.Kind);
            Assert.Contains("Restore a backup", trouble.Message, StringComparison.Ordinal);
        }
    }

    private static void Run(Desk desk, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(desk.Path, "seasonwright.db")};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the test's own texts
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
