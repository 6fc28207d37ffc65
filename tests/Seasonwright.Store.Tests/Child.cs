using System.Diagnostics;
using Seasonwright.Bench.Kill;

namespace Seasonwright.Store.Tests;

/// <summary>A second process that writes into a data folder: the writer of the kill bench, alone or under another program.</summary>
internal static class Child
{
    /// <summary>What a writer said and how it ended.</summary>
    public sealed record Ending(int Code, IReadOnlyList<string> Said, string Errors)
    {
        public IEnumerable<string> Acknowledged => Said.Where(line => line.StartsWith("ack ", StringComparison.Ordinal));

        public IEnumerable<string> Troubles => Said.Where(line => line.StartsWith("trouble ", StringComparison.Ordinal));
    }

    /// <param name="under">The program to run it under with its arguments; none to run it alone.</param>
    public static async Task<Ending> WriteAsync(string folder, int gestures, params IEnumerable<string> under)
    {
        using var child = Start(folder, gestures, under);
        var errors = child.StandardError.ReadToEndAsync();
        var said = await child.StandardOutput.ReadToEndAsync();
        await child.WaitForExitAsync();
        return new Ending(child.ExitCode, said.Split('\n', StringSplitOptions.RemoveEmptyEntries), await errors);
    }

    public static Process Start(string folder, int gestures, params IEnumerable<string> under)
    {
        string[] line = [.. under, "dotnet", typeof(Writer).Assembly.Location, "write", folder, "1", gestures.ToString(System.Globalization.CultureInfo.InvariantCulture)];
        var start = new ProcessStartInfo(line[0], line[1..]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        return Process.Start(start) ?? throw new InvalidOperationException($"{line[0]} did not start.");
    }
}
