using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

/// <summary>
/// A full or failing disk: the system itself refuses the calls (strace injects the error), a person gets a sentence, nothing is
/// half written, and the same gesture sent again later is kept.
/// </summary>
public sealed class DiskFaultTests : IDisposable
{
    private const int Gestures = 12;

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Theory]
    [InlineData("pwrite64", "ENOSPC", StoreTroubleKind.DiskFull)]
    [InlineData("pwrite64", "EIO", StoreTroubleKind.DiskError)]
    [InlineData("fsync,fdatasync", "EIO", StoreTroubleKind.DiskError)]
    public async Task A_gesture_the_disk_refuses_is_told_in_words_and_kept_when_sent_again(string calls, string error, StoreTroubleKind kind)
    {
        await Child.WriteAsync(place.Data, 2);
        // The first call of each gesture after the start fails for a while, so that gestures fail at their first, second, third page.
        var first = calls == "pwrite64" ? 4 : 2;
        var ending = await Tracer.WriteAsync(place.Data, Gestures, place.In("trace"),
            "-P", place.Database + "-wal", "-e", $"trace={calls}", "-e", $"inject={calls}:error={error}:when={first}..{first + 5}");

        Assert.True(ending.Code == 0, ending.Errors + string.Join('\n', ending.Said));
        Assert.NotEmpty(ending.Troubles);
        Assert.All(ending.Troubles, line => Assert.StartsWith($"trouble {kind} ", line, StringComparison.Ordinal));
        Assert.All(ending.Troubles, line => Assert.Contains(place.Database, line, StringComparison.Ordinal));
        Assert.Contains("INJECTED", await File.ReadAllTextAsync(place.In("trace")), StringComparison.Ordinal);
        await EverythingOnce();
    }

    [Fact]
    public async Task A_disk_that_is_full_at_the_very_first_start_leaves_nothing_in_the_way_of_the_next()
    {
        foreach (var call in new[] { 1, 12 })
        {
            var ending = await Tracer.WriteAsync(place.Data, Gestures, place.In("trace"),
                "-P", place.Database, "-P", place.Database + "-wal", "-P", place.Database + "-journal",
                "-e", "trace=pwrite64", "-e", $"inject=pwrite64:error=ENOSPC:when={call}+");
            Assert.Equal(3, ending.Code);
            Assert.StartsWith($"trouble {StoreTroubleKind.DiskFull} ", ending.Said[^1], StringComparison.Ordinal);
            Assert.Empty(ending.Acknowledged);
        }
        await EverythingOnce();
    }

    /// <summary>A last writer sends all gestures again; then each is there once, in order, without a gap.</summary>
    private async Task EverythingOnce()
    {
        var last = await Child.WriteAsync(place.Data, Gestures);
        Assert.True(last.Code == 0, last.Errors + string.Join('\n', last.Said));
        Assert.Equal("ok", Sql.Ask(place.Database, "PRAGMA integrity_check"));
        using var folder = await place.OpenAsync();
        var streams = await folder.Log.StreamsAsync();
        Assert.Equal(2, streams.Length);
        var entries = new List<LogEntry>();
        foreach (var stream in streams)
        {
            var all = await folder.Log.ReadAllAsync(stream.Id);
            Assert.Equal(Enumerable.Range(1, all.Length).Select(number => (long)number), Sample.Numbers(all));
            entries.AddRange(all);
        }
        Assert.Equal(Gestures, entries.Select(entry => entry.Gesture).Distinct().Count());
        Assert.Equal(entries.Count, entries.DistinctBy(entry => (entry.Stream, entry.Gesture, entry.IndexInGesture)).Count());
    }
}
