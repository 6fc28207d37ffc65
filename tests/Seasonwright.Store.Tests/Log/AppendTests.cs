using Microsoft.Extensions.Time.Testing;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

public sealed class AppendTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task What_was_appended_reads_back_the_same_after_a_restart()
    {
        var clock = new FakeTimeProvider(new DateTimeOffset(2027, 7, 5, 9, 30, 15, 123, TimeSpan.Zero));
        var gesture = Guid.NewGuid();
        LogEntry[] answer;
        using (var folder = await DataFolder.OpenAsync(place.Data, clock))
        {
            await folder.Log.AppendAsync(Sample.Birth());
            var outcome = await folder.Log.AppendAsync(Sample.Request(gesture, Sample.To(Sample.Season, 1, "ä \"first\" 🏐", "second") with { Undoes = 1, Redoes = null }));
            answer = [.. Assert.IsType<AppendOutcome.Appended>(outcome).Entries];
        }
        Assert.Equal(
            [
                new LogEntry(ClubId.Local, Sample.Season, 2, gesture, 0, Sample.Coach, clock.GetUtcNow(), 1, """{"edit":"ä "first" 🏐"}""", """{"step":"ä "first" 🏐"}""", "hash of ä \"first\" 🏐", 1, null),
                new LogEntry(ClubId.Local, Sample.Season, 3, gesture, 1, Sample.Coach, clock.GetUtcNow(), 1, """{"edit":"second"}""", """{"step":"second"}""", "hash of second", 1, null),
            ], answer);
        using var again = await place.OpenAsync();
        Assert.Equal(answer, await again.Log.ReadFromAsync(Sample.Season, 1));
        Assert.Equal([1, 2, 3], Sample.Numbers(await again.Log.ReadAllAsync(Sample.Season)));
        Assert.Equal(3, await again.Log.TailAsync(Sample.Season));
        Assert.Equal(0, await again.Log.TailAsync(new StreamId(Guid.NewGuid())));
    }

    [Fact]
    public async Task Who_was_slower_gets_the_entries_in_between_and_adds_nothing()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        var faster = Sample.Entries(await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 1, "faster", "faster still"))));
        var slower = await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Team, 1, "other stream"), Sample.To(Sample.Season, 1, "slower")));
        Assert.Equal(faster, Assert.IsType<AppendOutcome.Behind>(slower).Since);
        Assert.Equal(1, await folder.Log.TailAsync(Sample.Team));
        Assert.Equal(3, await folder.Log.TailAsync(Sample.Season));
    }

    [Fact]
    public async Task A_gesture_sent_again_gets_the_first_answer_whatever_it_holds_now()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        var gesture = Guid.NewGuid();
        var first = Sample.Entries(await folder.Log.AppendAsync(Sample.Request(gesture, Sample.To(Sample.Season, 1, "said once"))));
        await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 2, "later")));
        foreach (var after in new long[] { 1, 2, 3 })
        {
            var again = await folder.Log.AppendAsync(Sample.Request(gesture, Sample.To(Sample.Season, after, "said", "otherwise")));
            Assert.Equal(first, Assert.IsType<AppendOutcome.AlreadyThere>(again).Entries);
        }
        Assert.Equal(first, await folder.Log.FindGestureAsync(Sample.Season, gesture));
        Assert.Equal(3, await folder.Log.TailAsync(Sample.Season));
    }

    [Fact]
    public async Task The_same_gesture_id_is_another_gesture_in_another_stream()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        var gesture = Guid.NewGuid();
        Assert.IsType<AppendOutcome.Appended>(await folder.Log.AppendAsync(Sample.Request(gesture, Sample.To(Sample.Season, 1, "season"))));
        Assert.IsType<AppendOutcome.Appended>(await folder.Log.AppendAsync(Sample.Request(gesture, Sample.To(Sample.Team, 1, "team"))));
    }

    [Fact]
    public async Task A_group_over_several_streams_stands_or_falls_together()
    {
        using var folder = await place.OpenAsync();
        var born = Sample.Entries(await folder.Log.AppendAsync(Sample.Birth()));
        Assert.Equal([(Sample.Team, 1), (Sample.Season, 1)], born.Select(entry => (entry.Stream, entry.Number)));
        var gesture = Guid.NewGuid();
        var request = Sample.Request(gesture, Sample.To(Sample.Season, 1, "a", "b"), Sample.To(Sample.Team, 1, "c"));
        var both = Sample.Entries(await folder.Log.AppendAsync(request));
        Assert.Equal([(Sample.Season, 2L, 0), (Sample.Season, 3L, 1), (Sample.Team, 2L, 0)], both.Select(entry => (entry.Stream, entry.Number, entry.IndexInGesture)));
        Assert.Equal(both, Assert.IsType<AppendOutcome.AlreadyThere>(await folder.Log.AppendAsync(request)).Entries);
    }

    [Fact]
    public async Task The_directory_lists_streams_with_their_newest_title()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 1, "renamed") with { Title = "Spring" }));
        var streams = await folder.Log.StreamsAsync();
        Assert.Equal([(Sample.Team, "Harbour Vale", null), (Sample.Season, "Spring", (StreamId?)Sample.Team)], streams.Select(stream => (stream.Id, stream.Title, stream.Team)));
    }

    [Fact]
    public async Task Requests_that_cannot_be_meant_are_a_programmers_error_and_add_nothing()
    {
        using var folder = await place.OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Log.AppendAsync(Sample.Request(Sample.To(new StreamId(Guid.NewGuid()), 0, "nobody's"))));
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 9, "beyond"))));
        Assert.Throws<ArgumentException>(() => Sample.Request());
        Assert.Throws<ArgumentException>(() => Sample.Request(Sample.To(Sample.Season, 1)));
        Assert.Throws<ArgumentException>(() => Sample.Request(Sample.To(Sample.Season, -1, "before the start")));
        Assert.Throws<ArgumentException>(() => Sample.Request(Sample.To(Sample.Season, 1, "a"), Sample.To(Sample.Season, 1, "b")));
        Assert.Throws<ArgumentException>(() => Sample.Request(Sample.To(Sample.Season, 0, "a") with { Creates = new NewStream(StreamKind.Season, "no team") }));
        Assert.Equal(1, await folder.Log.TailAsync(Sample.Season));
    }

    [Theory]
    [InlineData("UPDATE log_entries SET author = 'somebody else'")]
    [InlineData("DELETE FROM log_entries")]
    public async Task The_file_itself_refuses_to_change_or_lose_an_entry(string sql)
    {
        await place.FillAsync();
        var before = await place.SaidAsync();
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => Sql.Run(place.Database, sql));
        Assert.Equal(before, await place.SaidAsync());
    }
}
