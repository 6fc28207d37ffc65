using Microsoft.Extensions.Time.Testing;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

public sealed class RemovalTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task A_removed_team_takes_its_seasons_with_it_and_leaves_tombstones()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2027, 7, 5, 9, 0, 0, TimeSpan.Zero));
        using var folder = await DataFolder.OpenAsync(place.Data, clock);
        await folder.Log.AppendAsync(Sample.Birth());
        await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 1, "secret-word")));
        await folder.Snapshots.KeepAsync(Sample.Season, 2, 1, "{}", "hash");
        var other = new StreamId(Guid.NewGuid());
        await folder.Log.AppendAsync(Sample.Request(Sample.To(other, 0, "stays") with { Creates = new NewStream(StreamKind.Team, "Second team") }));

        await folder.Log.RemoveAsync(Sample.Team, Sample.Coach);
        await folder.Log.RemoveAsync(Sample.Team, "again");

        Assert.Equal([other], (await folder.Log.StreamsAsync()).Select(stream => stream.Id));
        Assert.Empty(await folder.Log.ReadAllAsync(Sample.Season));
        Assert.Null(await folder.Snapshots.NewestAsync(Sample.Season));
        Assert.Equal(
            [
                new Removal(ClubId.Local, Sample.Team, StreamKind.Team, null, Sample.Coach, clock.GetUtcNow(), 1),
                new Removal(ClubId.Local, Sample.Season, StreamKind.Season, Sample.Team, Sample.Coach, clock.GetUtcNow(), 2),
            ], [await Tombstone(Sample.Team), await Tombstone(Sample.Season)]);

        async Task<Removal> Tombstone(StreamId stream) =>
            Assert.IsType<AppendOutcome.Gone>(await folder.Log.AppendAsync(Sample.Request(Sample.To(stream, 1, "late")))).Removal;
    }

    [Fact]
    public async Task What_is_removed_is_gone_from_the_file_too()
    {
        await place.FillAsync();
        using (var folder = await place.OpenAsync()) await folder.Log.RemoveAsync(Sample.Team, Sample.Coach);
        Assert.DoesNotContain("edit 3", System.Text.Encoding.UTF8.GetString(await File.ReadAllBytesAsync(place.Database)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_still_sends_to_it_is_told_who_removed_it_and_nothing_comes_back()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        await folder.Log.RemoveAsync(Sample.Team, Sample.Coach);
        AppendRequest[] late =
        [
            Sample.Request(Sample.To(Sample.Season, 1, "late")),
            Sample.Birth(),
            Sample.Request(Sample.To(new StreamId(Guid.NewGuid()), 0, "new season of a removed team") with { Creates = new NewStream(StreamKind.Season, "late", Sample.Team) }),
        ];
        foreach (var request in late)
            Assert.Equal(Sample.Coach, Assert.IsType<AppendOutcome.Gone>(await folder.Log.AppendAsync(request)).Removal.RemovedBy);
        Assert.Empty(await folder.Log.StreamsAsync());
    }
}
