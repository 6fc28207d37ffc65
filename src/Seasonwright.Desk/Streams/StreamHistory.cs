using Seasonwright.Core;
using Seasonwright.Core.Facts;
using Seasonwright.Store.Log;
using Seasonwright.Wire;

namespace Seasonwright.Desk.Streams;

/// <summary>Turns a log into lines people read.</summary>
internal static class StreamHistory
{
    /// <summary>So many edits of one gesture are told; the rest is counted.</summary>
    public const int MostTold = 3;

    /// <param name="entries">The whole stream in order.</param>
    /// <returns>One line a gesture, newest first.</returns>
    public static IReadOnlyList<HistoryLine> Of(IEnumerable<LogEntry> entries, IStreamTrade trade)
    {
        var lines = new Dictionary<long, HistoryLine>();
        // Which gesture an undo, or a redo of an undo, is about in the end.
        var about = new Dictionary<long, long>();
        var facts = FactSet.Empty;
        foreach (var group in entries.GroupBy(entry => entry.Gesture))
        {
            var first = group.First();
            var told = new List<string>();
            var wrote = new HashSet<Key>();
            foreach (var entry in group)
            {
                if (told.Count < MostTold && LogText.ReadEdit(entry.EditJson) is { } edit) told.Add(trade.Describe(facts, edit));
                var step = LogText.ReadStep(entry.StepJson);
                wrote.UnionWith(step.Changes.Select(change => change.Key));
                facts = facts.Evolve(step);
            }
            var subject = about[first.Number] = (first.Undoes ?? first.Redoes) is { } target ? about[target] : first.Number;
            var named = subject != first.Number ? lines[subject].Named : Told(told, group.Count() - told.Count);
            if (subject != first.Number) lines[subject] = lines[subject] with { TakenBack = first.Undoes is not null };
            var words = first.Undoes is not null ? Sentences.Say("did.undo", named) : first.Redoes is not null ? Sentences.Say("did.redo", named) : named;
            lines[first.Number] = new HistoryLine(first.Number, group.Last().Number, first.Author, first.Instant, words, named, false) { Wrote = wrote };
        }
        return [.. lines.Values.OrderByDescending(line => line.First)];
    }

    private static string Told(IEnumerable<string> told, int more)
    {
        var words = string.Join("; ", told);
        return more > 0 ? Sentences.Say("did.more", words, more) : words;
    }
}
