using System.Collections.Immutable;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.Tests;

/// <summary>Requests as a workspace would send them, short enough to read in a test.</summary>
internal static class Sample
{
    public const string Coach = "coach";

    public static StreamId Team { get; } = new(new Guid("0198f300-0000-7000-8000-00000000000a"));

    public static StreamId Season { get; } = new(new Guid("0198f300-0000-7000-8000-00000000000b"));

    public static NewEntry Entry(string name) => new(1, $$"""{"edit":"{{name}}"}""", $$"""{"step":"{{name}}"}""", $"hash of {name}");

    public static StreamAppend To(StreamId stream, long after, params string[] names) => new(stream, after, [.. names.Select(Entry)]);

    public static AppendRequest Request(params StreamAppend[] appends) => Request(Guid.NewGuid(), appends);

    public static AppendRequest Request(Guid gesture, params StreamAppend[] appends) => new(gesture, Coach, [.. appends]);

    /// <summary>A team and its season, one entry each, in one gesture.</summary>
    public static AppendRequest Birth(StreamId? season = null) => Request(
        To(Team, 0, "team born") with { Creates = new NewStream(StreamKind.Team, "Harbour Vale") },
        To(season ?? Season, 0, "season born") with { Creates = new NewStream(StreamKind.Season, "2027/28", Team) });

    public static ImmutableArray<LogEntry> Entries(AppendOutcome outcome) => outcome switch
    {
        AppendOutcome.Appended appended => appended.Entries,
        AppendOutcome.AlreadyThere there => there.Entries,
        _ => throw new InvalidOperationException($"Expected entries, got {outcome}."),
    };

    public static IEnumerable<long> Numbers(IEnumerable<LogEntry> entries) => entries.Select(entry => entry.Number);

    /// <summary>Number of a stream's last entry; 0 when there is none.</summary>
    public static async Task<long> TailAsync(this StreamLog log, StreamId stream) => (await log.ReadAllAsync(stream)) is [.., var last] ? last.Number : 0;

    /// <summary>Everything a folder's log says, a line an entry.</summary>
    public static async Task<string> Said(DataFolder folder)
    {
        var lines = new List<string>();
        foreach (var stream in await folder.Log.StreamsAsync())
        {
            lines.Add(stream.ToString());
            lines.AddRange((await folder.Log.ReadAllAsync(stream.Id)).Select(entry => entry.ToString()));
        }
        return string.Join('\n', lines);
    }
}
