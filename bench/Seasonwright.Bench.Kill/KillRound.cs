using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using Seasonwright.Store;
using Seasonwright.Store.Log;

namespace Seasonwright.Bench.Kill;

/// <summary>One writer, killed once at a random moment, and what it left behind.</summary>
/// <param name="Killed">False when the writer had finished before the kill came.</param>
/// <param name="Acknowledged">Gestures the dead writer had acknowledged.</param>
/// <param name="Found">Gestures in the log after the kill: the acknowledged ones and at most the one in flight.</param>
/// <param name="Resent">Gestures sent again that got exactly the first answer.</param>
/// <param name="Total">Gestures in the log after a second writer sent all of them again.</param>
/// <param name="Problems">What is not as promised; empty when all is well.</param>
public sealed record KillRound(int Seed, bool Killed, int Acknowledged, int Found, int Resent, int Total, IReadOnlyList<string> Problems)
{
    /// <param name="duringStart">Kill before the first edit, perhaps amid the migrations; else at a random edit.</param>
    public static async Task<KillRound> Run(string folder, int seed, int edits, bool duringStart)
    {
        var gestures = new Gestures(seed);
        var random = new Random(seed);
        var problems = new List<string>();

        var (first, killed) = await Write(folder, seed, edits, duringStart ? 0 : random.Next(1, edits), random.Next(duringStart ? 800 : 8), problems);
        var database = Path.Combine(folder, "seasonwright.db");
        if (File.Exists(database)) CheckIntegrity(database, problems);
        var found = await Check(folder, gestures, edits, problems);
        foreach (var (gesture, answer) in first)
            if (!string.Equals(found.GetValueOrDefault(gesture), answer, StringComparison.Ordinal))
                problems.Add(FormattableString.Invariant($"acknowledged gesture {gesture} as {answer}, found {found.GetValueOrDefault(gesture) ?? "nothing"}"));
        if (found.Count > first.Count + 1) problems.Add("more than one gesture nobody acknowledged");

        var (second, _) = await Write(folder, seed, edits, killAfter: null, 0, problems);
        var resent = first.Count(line => string.Equals(second.GetValueOrDefault(line.Key), line.Value, StringComparison.Ordinal));
        if (resent < first.Count) problems.Add("a gesture sent again got another answer");
        var total = await Check(folder, gestures, edits, problems);
        if (total.Count != edits) problems.Add(FormattableString.Invariant($"{total.Count} of {edits} gestures in the end"));
        CheckIntegrity(database, problems);
        return new KillRound(seed, killed, first.Count, found.Count, resent, total.Count, problems);
    }

    /// <summary>Starts a writer; kills it (SIGKILL) after so many acknowledgements and a moment more. Answers by gesture.</summary>
    private static async Task<(Dictionary<int, string> Answers, bool Killed)> Write(
        string folder, int seed, int edits, int? killAfter, int moment, List<string> problems)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var argument in (string[])[typeof(Writer).Assembly.Location, "write", folder, Text(seed), Text(edits)]) start.ArgumentList.Add(argument);
        using var writer = Process.Start(start) ?? throw new InvalidOperationException("The writer did not start.");
        var answers = new Dictionary<int, string>();
        var killed = false;
        if (killAfter is 0)
        {
            await Task.Delay(moment);
            killed = Kill(writer);
        }
        while (await writer.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.EndsWith(Writer.EndOfLine, StringComparison.Ordinal) && line.Split(' ') is ["ack", var gesture, var answer, _])
                answers[int.Parse(gesture, CultureInfo.InvariantCulture)] = answer;
            else if (line.StartsWith("trouble", StringComparison.Ordinal)) problems.Add(line);
            if (killed || answers.Count != killAfter) continue;
            await Task.Delay(moment);
            killed = Kill(writer);
        }
        await writer.WaitForExitAsync();
        if (killAfter is null && writer.ExitCode != 0) throw new InvalidOperationException($"The second writer ended with {Text(writer.ExitCode)}.");
        return (answers, killed);
    }

    private static bool Kill(Process writer)
    {
        if (writer.HasExited) return false;
        writer.Kill();
        return true;
    }

    /// <summary>Opens what is there as a workspace would, and compares it with what the seed says. Answers by gesture.</summary>
    private static async Task<Dictionary<int, string>> Check(string path, Gestures gestures, int edits, List<string> problems)
    {
        using var folder = await DataFolder.OpenAsync(path, TimeProvider.System);
        ImmutableArray<LogEntry> entries = [.. await folder.Log.ReadAllAsync(gestures.Team), .. await folder.Log.ReadAllAsync(gestures.Season)];
        foreach (var stream in entries.GroupBy(entry => entry.Stream))
            if (!stream.Select(entry => entry.Number).SequenceEqual(Enumerable.Range(1, stream.Count()).Select(number => (long)number)))
                problems.Add("numbers are not 1, 2, 3 ...");

        var numbers = Enumerable.Range(1, edits).ToDictionary(gestures.Id);
        var found = new Dictionary<int, string>();
        foreach (var group in entries.GroupBy(entry => entry.Gesture))
        {
            var gesture = numbers[group.Key];
            found[gesture] = Writer.Answer([.. group]);
            var expected = gestures.Streams(gesture).SelectMany(stream => gestures.Entries(gesture, stream).Select((entry, index) => (stream, index, entry)));
            var actual = group.Select(entry => (entry.Stream, entry.IndexInGesture, new NewEntry(entry.WireVersion, entry.EditJson, entry.StepJson, entry.HashAfter)));
            if (!actual.SequenceEqual(expected)) problems.Add(FormattableString.Invariant($"gesture {gesture} is not whole, or there twice"));
        }
        return found;
    }

    private static void CheckIntegrity(string database, List<string> problems)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = database, Pooling = false }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        if (command.ExecuteScalar() is not "ok") problems.Add("integrity_check is not ok");
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
