using Seasonwright.Desk.Streams;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Desk.Tests.Streams;

public class UndoStacksTests
{
    /// <summary>Pages ask on their own threads, also for people who never wrote anything, while the writer notes.</summary>
    [Fact]
    public async Task Asking_while_the_writer_notes_disturbs_nobody()
    {
        const int people = 20_000;
        var stacks = new UndoStacks();
        using var begin = new Barrier(4);
        var asking = Enumerable.Range(0, 3).Select(page => Task.Factory.StartNew(() =>
        {
            begin.SignalAndWait();
            for (var n = 0; n < people; n++) Assert.Null(stacks.NextUndo($"visitor {page} {n}"));
        }, TaskCreationOptions.LongRunning)).ToList();
        begin.SignalAndWait();
        for (var n = 0; n < people; n++) stacks.Note([Entry($"writer {n}", n + 2)]);
        await Task.WhenAll(asking);
        for (var n = 0; n < people; n++) Assert.Equal(n + 2, stacks.NextUndo($"writer {n}"));
    }

    private static LogEntry Entry(string author, long number) =>
        new(ClubId.Local, new StreamId(Guid.Empty), number, Guid.Empty, 0, author, DateTimeOffset.UnixEpoch, 1, "{}", "{}", "", null, null);
}
