using Microsoft.Data.Sqlite;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

/// <summary>
/// A disk that refuses. SQLite itself is told to refuse (read-only, or at its greatest size) on every connection of this
/// process, so that no rights are needed; the store's tests do the same with real disks.
/// </summary>
public class FaultTests
{
    private const string ReadOnly = "PRAGMA query_only = ON", Full = "PRAGMA max_page_count = 1", Well = "PRAGMA query_only = OFF; PRAGMA max_page_count = 1000000";

    [Theory]
    [InlineData(ReadOnly, "cannot be written")]
    [InlineData(Full, "is full")]
    public async Task What_the_disk_refuses_is_told_in_words_changes_nothing_and_may_be_sent_again(string fault, string words)
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1000)));
        var before = (open.Season, open.Stream.State);
        var told = 0;
        open.Changed += () => told++;
        // Large enough to need new pages.
        var gesture = Desk.Gesture(open, [.. Enumerable.Range(1, 40).Select(n => new SetNote(new Note(new($"n{n}"), DaySpan.Of(new(2027, 8, n % 28 + 1)), new string('x', 2000))))]);

        Tell(desk, fault);
        for (var attempt = 0; attempt < 2; attempt++)
        {
            var answer = Assert.IsType<CannotKeep>(await open.Stream.ApplyAsync(desk.Runa, gesture));
            Assert.Contains(words, answer.Sentence, StringComparison.Ordinal);
            Assert.Contains(desk.Path, answer.Sentence, StringComparison.Ordinal);
        }
        Assert.Equal(before, (open.Season, open.Stream.State));
        Assert.Equal(0, told);

        Tell(desk, Well);
        Assert.Equal(new Kept(42), await open.Stream.ApplyAsync(desk.Runa, gesture));
        Assert.Equal((40, 1), (open.Season.Notes.Count(), told));
        await desk.RestartAsync();
        Assert.Equal(open.Season.Facts, (await desk.SeasonAsync(open.Season.Id)).Season.Facts);
    }

    [Fact]
    public async Task Undo_birth_and_removal_are_told_too()
    {
        await using var desk = await Desk.OpenAsync();
        var id = await desk.StartAsync();
        var open = await desk.SeasonAsync(id);
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(1, 1000)));
        var (undo, birth) = (Guid.NewGuid(), Guid.NewGuid());
        SeasonEdit start = new StartSeason(new(2028, 7, 3), DayOfWeek.Monday, Desk.Weeks, new TeamCard("Other"));

        Tell(desk, ReadOnly);
        Assert.IsType<CannotKeep>(await open.Stream.UndoAsync(desk.Runa, undo));
        Assert.IsType<CannotKeep>((await desk.Workspace.CreateAsync(desk.Runa, birth, null, [], [start])).Answer);
        Assert.IsType<CannotKeep>(await desk.Workspace.RemoveTeamAsync(desk.Runa, open.Setup.Id));
        Assert.Equal(1000, Desk.Au(open, 1));
        Assert.Equal(id, Assert.Single(await desk.Workspace.SeasonsAsync()).Id);

        Tell(desk, Well);
        Assert.IsType<Kept>(await open.Stream.UndoAsync(desk.Runa, undo));
        Assert.IsType<Kept>((await desk.Workspace.CreateAsync(desk.Runa, birth, null, [], [start])).Answer);
        Assert.IsType<Kept>(await desk.Workspace.RemoveTeamAsync(desk.Runa, open.Setup.Id));
        Assert.Equal("Other", Assert.Single(await desk.Workspace.SeasonsAsync()).TeamName);
    }

    [Fact]
    public async Task A_folder_that_may_only_be_read_still_shows_its_seasons()
    {
        await using var desk = await Desk.OpenAsync();
        var id = await desk.StartAsync();
        await desk.RestartAsync();
        Tell(desk, ReadOnly);
        Assert.True((await desk.SeasonAsync(id)).Season.IsStarted);
    }

    /// <summary>Connections are pooled by their text: the workspace's idle ones are taken out, told, and put back.</summary>
    private static void Tell(Desk desk, string pragma)
    {
        var text = new SqliteConnectionStringBuilder { DataSource = Path.Combine(desk.Path, "seasonwright.db"), DefaultTimeout = 10 }.ToString();
        var all = Enumerable.Range(0, 8).Select(_ => new SqliteConnection(text)).ToList();
        foreach (var connection in all)
        {
            connection.Open();
            using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the test's own texts
            command.CommandText = pragma;
#pragma warning restore CA2100
            command.ExecuteNonQuery();
        }
        foreach (var connection in all) connection.Dispose();
    }
}
