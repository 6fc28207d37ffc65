using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Bench.Kill;

/// <summary>The process that gets killed: appends one gesture after the other and says so after each acknowledgement, never before.</summary>
public static class Writer
{
    /// <summary>Ends each line, so that a line cut by the kill is not mistaken for a whole one.</summary>
    public const string EndOfLine = " .";

    public static async Task<int> Run(string path, int seed, int edits, Stream output)
    {
        using var folder = await DataFolder.OpenAsync(path, TimeProvider.System);
        var gestures = new Gestures(seed);
        var tails = new Dictionary<StreamId, long>
        {
            [gestures.Team] = await folder.Log.TailAsync(gestures.Team),
            [gestures.Season] = await folder.Log.TailAsync(gestures.Season),
        };
        for (var gesture = 1; gesture <= edits; gesture++)
        {
            var entries = await folder.Log.AppendAsync(gestures.Request(gesture, stream => tails[stream])) switch
            {
                AppendOutcome.Appended appended => appended.Entries,
                AppendOutcome.AlreadyThere there => there.Entries,
                var other => throw new InvalidOperationException($"Gesture {gesture.ToString(CultureInfo.InvariantCulture)} was answered by {other}."),
            };
            foreach (var entry in entries) tails[entry.Stream] = Math.Max(tails[entry.Stream], entry.Number);
            // One line, one write to the pipe, no buffer.
            await output.WriteAsync(Encoding.UTF8.GetBytes(FormattableString.Invariant($"ack {gesture} {Answer(entries)}{EndOfLine}\n")));
        }
        return 0;
    }

    /// <summary>The numbers a gesture got, as text: stream:first-last for each stream.</summary>
    public static string Answer(ImmutableArray<LogEntry> entries) => string.Join(',', entries.GroupBy(entry => entry.Stream)
        .Select(group => FormattableString.Invariant($"{group.Key}:{group.Min(entry => entry.Number)}-{group.Max(entry => entry.Number)}"))
        .Order(StringComparer.Ordinal));
}
