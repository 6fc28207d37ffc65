namespace Seasonwright.Store.Tests;

/// <summary>"Acknowledged" means "flushed": seen in the calls the writer makes to the system, not in its settings.</summary>
public sealed class FlushBeforeAcknowledgeTests : IDisposable
{
    private const string Write = """7 pwrite64(9</d/seasonwright.db-wal>, "x"..., 4096, 32) = 4096""", Ack = """7 write(1<pipe:[3]>, "ack 1 aa:1-1 .\n", 16) = 16""";

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task Every_acknowledgement_comes_after_the_flush_of_what_it_wrote()
    {
        const int Gestures = 25;
        var log = place.In("trace");
        var ending = await Tracer.WriteAsync(place.Data, Gestures, log, "-e", "trace=pwrite64,fsync,fdatasync,write");
        Assert.True(ending.Code == 0, ending.Errors);
        Assert.Equal(Gestures, ending.Acknowledged.Count());
        var (problems, acknowledged) = FlushTrace.Read(await File.ReadAllLinesAsync(log));
        Assert.Empty(problems);
        Assert.Equal(Gestures, acknowledged);
    }

    [Theory]
    [InlineData("7 fsync(9</d/seasonwright.db-wal>) = 0", 0)]
    [InlineData("7 fdatasync(9</d/seasonwright.db-wal>) = 0", 0)]
    [InlineData("7 fsync(9</d/seasonwright.db-wal> <unfinished ...>\n8 fsync(4</d/other>) = 0\n7 <... fsync resumed>) = 0", 0)]
    [InlineData("7 fsync(9</d/seasonwright.db-wal> <unfinished ...>\n8 <... fsync resumed>) = 0", 1)]
    [InlineData("7 fsync(9</d/seasonwright.db-wal> <unfinished ...>\n7 <... fsync resumed>) = -1 EIO (Input/output error)", 1)]
    [InlineData("7 fsync(9</d/seasonwright.db-wal>) = -1 EIO (Input/output error)", 1)]
    [InlineData("7 fsync(9</d/seasonwright.db>) = 0", 1)]
    [InlineData("7 fsync(9</d/seasonwright.db-wal>) = 0\n" + Write, 1)]
    [InlineData("", 1)]
    public void A_missing_flush_would_be_seen(string between, int problems)
    {
        Assert.Equal(problems, FlushTrace.Read([Write, .. between.Split('\n'), Ack]).Problems.Count);
        Assert.Single(FlushTrace.Read([Ack]).Problems);
    }
}
