using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

public sealed class BackupTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task A_copy_made_while_others_write_is_the_log_as_it_stood_at_one_moment()
    {
        string[] copies = [.. Enumerable.Range(1, 6).Select(number => place.In($"copy{number}.db"))];
        LogEntry[] season, team;
        using (var folder = await place.OpenAsync())
        {
            await folder.Log.AppendAsync(Sample.Birth());
            using var enough = new CancellationTokenSource();
            var writing = Task.Run(async () =>
            {
                // Every gesture writes to both streams, so a copy that holds half a gesture shows.
                for (var number = 1; !enough.IsCancellationRequested; number++)
                    await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, number, $"{number}"), Sample.To(Sample.Team, number, $"{number}")));
            });
            var before = 0L;
            foreach (var copy in copies)
            {
                while (await folder.Log.TailAsync(Sample.Season) < before + 5) await Task.Yield();
                before = await folder.Log.TailAsync(Sample.Season);
                Backup.Write(place.Data, copy);
            }
            await enough.CancelAsync();
            await writing;
            (season, team) = ([.. await folder.Log.ReadAllAsync(Sample.Season)], [.. await folder.Log.ReadAllAsync(Sample.Team)]);
        }

        var last = 0;
        foreach (var copy in copies)
        {
            Assert.Equal("ok", Sql.Ask(copy, "PRAGMA integrity_check"));
            var restored = copy + ".folder";
            Restore.From(copy, restored, TimeProvider.System);
            using var folder = await DataFolder.OpenAsync(restored, TimeProvider.System);
            var copied = await folder.Log.ReadAllAsync(Sample.Season);
            Assert.True(copied.Length > last, "each copy holds what was acknowledged before it began");
            last = copied.Length;
            Assert.Equal(season[..last], copied);
            Assert.Equal(team[..last], await folder.Log.ReadAllAsync(Sample.Team));
        }
    }

    [Fact]
    public async Task A_copy_is_one_plain_file_and_replaces_an_older_one()
    {
        await place.FillAsync();
        await File.WriteAllTextAsync(place.In("copy.db"), "an older copy");
        Backup.Write(place.Data, place.In("copy.db"));
        Assert.Equal("delete", Sql.Ask(place.In("copy.db"), "PRAGMA journal_mode"));
        Assert.Equal("copy.db", Path.GetFileName(Assert.Single(Directory.GetFiles(place.Path))));
    }

    [Fact]
    public async Task Without_a_database_of_ours_or_over_it_there_is_no_backup()
    {
        await place.FillAsync();
        var said = await place.SaidAsync();
        foreach (var (folder, file) in new[] { ("nowhere", "copy.db"), ("data", "data/seasonwright.db"), ("data", "data/seasonwright.db-wal"), ("data", "no folder/copy.db") })
        {
            var trouble = Assert.Throws<StoreTrouble>(() => Backup.Write(place.In(folder), place.In(file)));
            Assert.Equal(StoreTroubleKind.Unreachable, trouble.Kind);
        }
        Assert.False(File.Exists(place.In("copy.db")));
        Assert.Equal(said, await place.SaidAsync());
    }
}
