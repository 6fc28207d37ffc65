using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

public sealed class SnapshotTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task The_newest_at_or_before_a_number_is_given()
    {
        await place.FillAsync();
        using var folder = await place.OpenAsync();
        Assert.Null(await folder.Snapshots.NewestAsync(Sample.Season));
        await folder.Snapshots.KeepAsync(Sample.Season, 2, 1, "two", "h2");
        await folder.Snapshots.KeepAsync(Sample.Season, 4, 1, "four", "h4");
        await folder.Snapshots.KeepAsync(Sample.Season, 4, 1, "four again", "h4b");
        Assert.Equal(new Snapshot(ClubId.Local, Sample.Season, 4, 1, "four again", "h4b"), await folder.Snapshots.NewestAsync(Sample.Season));
        Assert.Equal("two", (await folder.Snapshots.NewestAsync(Sample.Season, upTo: 3))?.Json);
        Assert.Null(await folder.Snapshots.NewestAsync(Sample.Season, upTo: 1));
    }

    [Fact]
    public async Task Throwing_all_of_them_away_leaves_the_log_as_it_was()
    {
        await place.FillAsync();
        var before = await place.SaidAsync();
        using (var folder = await place.OpenAsync())
        {
            await folder.Snapshots.KeepAsync(Sample.Season, 2, 1, "two", "h2");
            await folder.Snapshots.DiscardAsync(Sample.Season);
            Assert.Null(await folder.Snapshots.NewestAsync(Sample.Season));
            await folder.Snapshots.KeepAsync(Sample.Season, 3, 1, "three", "h3");
        }
        Sql.Run(place.Database, "DELETE FROM snapshots");
        Assert.Equal(before, await place.SaidAsync());
    }

    [Fact]
    public async Task A_snapshot_of_a_stream_that_is_not_there_is_not_kept()
    {
        using var folder = await place.OpenAsync();
        await folder.Snapshots.KeepAsync(Sample.Season, 1, 1, "orphan", "h");
        Assert.Null(await folder.Snapshots.NewestAsync(Sample.Season));
    }
}
