using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

/// <summary>Many hands at once: every acknowledged entry is there once, and numbers have no gap.</summary>
public sealed class ConcurrencyTests : IDisposable
{
    private const int Writers = 8, Each = 15;

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(Writers)]
    public async Task Eight_writers_leave_dense_numbers_and_every_acknowledged_entry(int streams)
    {
        using var folder = await place.OpenAsync();
        StreamId[] ids = [.. Enumerable.Range(1, streams).Select(_ => new StreamId(Guid.NewGuid()))];
        foreach (var id in ids)
            await folder.Log.AppendAsync(Sample.Request(Sample.To(id, 0, "born") with { Creates = new NewStream(StreamKind.Club, "hall") }));

        var acknowledged = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() => Write(folder.Log, ids[writer % streams], writer))));

        foreach (var id in ids)
        {
            var entries = await folder.Log.ReadAllAsync(id);
            Assert.Equal(Enumerable.Range(1, entries.Length).Select(number => (long)number), Sample.Numbers(entries));
            Assert.Equal(acknowledged.SelectMany(all => all).Where(entry => entry.Stream == id).OrderBy(entry => entry.Number), entries.Skip(1));
        }
        Assert.Equal(Writers * Each, acknowledged.Sum(all => all.Count));
    }

    [Fact]
    public async Task Two_openings_of_one_file_share_the_numbers_without_a_gap()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        using var second = new Sqlite.Database(place.Database);
        var other = new StreamLog(second, ClubId.Local, TimeProvider.System);
        await Task.WhenAll(Task.Run(() => Write(folder.Log, Sample.Season, 1)), Task.Run(() => Write(other, Sample.Season, 2)));
        Assert.Equal(Enumerable.Range(1, 1 + 2 * Each).Select(number => (long)number), Sample.Numbers(await other.ReadAllAsync(Sample.Season)));
    }

    [Fact]
    public async Task One_gesture_sent_by_eight_at_once_is_appended_once()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        var request = Sample.Request(Sample.To(Sample.Season, 1, "once", "only"), Sample.To(Sample.Team, 1, "too"));
        var answers = await Task.WhenAll(Enumerable.Range(0, Writers).Select(_ => Task.Run(() => folder.Log.AppendAsync(request))));
        Assert.Single(answers.OfType<AppendOutcome.Appended>());
        var first = Sample.Entries(answers[0]);
        Assert.All(answers, answer => Assert.Equal(first, Sample.Entries(answer)));
        Assert.Equal(3, await folder.Log.TailAsync(Sample.Season));
    }

    [Fact]
    public async Task Somebody_elses_lock_ends_in_a_sentence_and_the_same_request_works_afterwards()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        var request = Sample.Request(Sample.To(Sample.Season, 1, "patient"));
        using (var other = Sql.Open(place.Database))
        {
            Sql.Run(other, "BEGIN IMMEDIATE");
            var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => folder.Log.AppendAsync(request));
            Assert.Equal((StoreTroubleKind.Busy, place.Database), (trouble.Kind, trouble.Subject));
        }
        Assert.IsType<AppendOutcome.Appended>(await folder.Log.AppendAsync(request));
    }

    private static async Task<List<LogEntry>> Write(StreamLog log, StreamId stream, int writer)
    {
        var acknowledged = new List<LogEntry>();
        for (var number = 0; number < Each; number++)
        {
            var gesture = Guid.NewGuid();
            var tail = await log.TailAsync(stream);
            AppendOutcome outcome;
            while ((outcome = await log.AppendAsync(Sample.Request(gesture, Sample.To(stream, tail, $"{writer}/{number}")))) is AppendOutcome.Behind behind)
                tail = behind.Since[^1].Number;
            acknowledged.AddRange(Assert.IsType<AppendOutcome.Appended>(outcome).Entries);
        }
        return acknowledged;
    }
}
