using System.Text.RegularExpressions;

namespace Seasonwright.Store.Tests;

/// <summary>Reads what strace saw of a writer and judges each acknowledgement by it.</summary>
internal static partial class FlushTrace
{
    /// <summary>One line a gesture that was acknowledged before what it wrote was on the disk; and how many were acknowledged.</summary>
    /// <param name="lines">Lines of <c>strace -f -y</c>, in the order strace saw them.</param>
    public static (IReadOnlyList<string> Problems, int Acknowledged) Read(IEnumerable<string> lines)
    {
        var problems = new List<string>();
        var acknowledged = 0;
        var (written, flushed) = (false, false);
        var flushing = new HashSet<string>(StringComparer.Ordinal);
        foreach (var line in lines)
        {
            if (Line().Match(line) is not { Success: true } read) continue;
            var (thread, call, rest) = (read.Groups["thread"].Value, read.Groups["call"].Value, read.Groups["rest"].Value);
            switch (call)
            {
                case "pwrite64" when rest.Contains("seasonwright.db-wal>", StringComparison.Ordinal):
                    (written, flushed) = (true, false);
                    break;
                // A flush counts when it has come back without an error, also when strace tells it in two lines.
                case "fsync" or "fdatasync" when rest.Contains("seasonwright.db-wal>", StringComparison.Ordinal):
                    if (rest.EndsWith("= 0", StringComparison.Ordinal)) flushed = true;
                    else if (rest.Contains("<unfinished", StringComparison.Ordinal)) flushing.Add(thread);
                    break;
                case "... fsync resumed" or "... fdatasync resumed" when flushing.Remove(thread):
                    flushed |= rest.EndsWith("= 0", StringComparison.Ordinal);
                    break;
                case "write" when rest.Contains("\"ack ", StringComparison.Ordinal):
                    acknowledged++;
                    if (!written) problems.Add($"nothing written before: {line}");
                    else if (!flushed) problems.Add($"not flushed before: {line}");
                    (written, flushed) = (false, false);
                    break;
            }
        }
        return (problems, acknowledged);
    }

    [GeneratedRegex(@"^(?<thread>\d+) +(<?)(?<call>\.\.\. \w+ resumed|\w+)[(>](?<rest>.*)$", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Line();
}
