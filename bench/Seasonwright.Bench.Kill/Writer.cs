using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Bench.Kill;

/// <summary>
/// The process that gets killed: appends one gesture after the other and says so after each acknowledgement, never before.
/// What the store refuses it says too, and sends the same gesture again.
/// </summary>
public static class Writer
{
    /// <summary>How often one gesture is sent while the store refuses it.</summary>
    private const int Attempts = 20;

    /// <summary>Ends each line, so that a line cut by the kill is not mistaken for a whole one.</summary>
    public const string EndOfLine = " .";

    /// <returns>0, or 3 when the store would not open or refused one gesture too often.</returns>
    public static async Task<int> Run(string path, int seed, int edits, Stream output)
    {
        try
        {
            await AppendAll(path, seed, edits, line => Say(output, line));
            return 0;
        }
        catch (StoreTrouble trouble)
        {
            await Say(output, Words(trouble));
            return 3;
        }
    }

    private static async Task AppendAll(string path, int seed, int edits, Func<string, Task> say)
    {
        using var folder = await DataFolder.OpenAsync(path, TimeProvider.System);
        var gestures = new Gestures(seed);
        var tails = new Dictionary<StreamId, long>
        {
            [gestures.Team] = (await folder.Log.ReadAllAsync(gestures.Team)).Length,
            [gestures.Season] = (await folder.Log.ReadAllAsync(gestures.Season)).Length,
        };
        for (var gesture = 1; gesture <= edits; gesture++)
        {
            var entries = await Append(folder.Log, gestures.Request(gesture, stream => tails[stream]), say) switch
            {
                AppendOutcome.Appended appended => appended.Entries,
                AppendOutcome.AlreadyThere there => there.Entries,
                var other => throw new InvalidOperationException($"Gesture {gesture.ToString(CultureInfo.InvariantCulture)} was answered by {other}."),
            };
            foreach (var entry in entries) tails[entry.Stream] = Math.Max(tails[entry.Stream], entry.Number);
            await say(FormattableString.Invariant($"ack {gesture} {Answer(entries)}"));
        }
    }

    private static async Task<AppendOutcome> Append(StreamLog log, AppendRequest request, Func<string, Task> say)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return await log.AppendAsync(request);
            }
            catch (StoreTrouble trouble) when (attempt < Attempts)
            {
                await say(Words(trouble));
            }
        }
    }

    private static string Words(StoreTrouble trouble) => $"trouble {trouble.Kind} {trouble.Message}";

    // One line, one write to the pipe, no buffer.
    private static async Task Say(Stream output, string line) => await output.WriteAsync(Encoding.UTF8.GetBytes(line + EndOfLine + "\n"));

    /// <summary>The numbers a gesture got, as text: stream:first-last for each stream.</summary>
    public static string Answer(ImmutableArray<LogEntry> entries) => string.Join(',', entries.GroupBy(entry => entry.Stream)
        .Select(group => FormattableString.Invariant($"{group.Key}:{group.Min(entry => entry.Number)}-{group.Max(entry => entry.Number)}"))
        .Order(StringComparer.Ordinal));
}
