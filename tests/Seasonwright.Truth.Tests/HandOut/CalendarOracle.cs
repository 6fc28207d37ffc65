using System.Diagnostics;
using System.Text.Json.Nodes;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>The second reader of calendars: Debian's python3-icalendar, by the script in tests/Oracles.</summary>
internal static class CalendarOracle
{
    public static async Task<IReadOnlyList<JsonObject>> ReadAsync(IReadOnlyList<string> files)
    {
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in files.Prepend(Path.Combine(AppContext.BaseDirectory, "Oracles", "read-calendar.py"))) start.ArgumentList.Add(argument);
        start.Environment["PYTHONIOENCODING"] = "utf-8";
        using var reader = Process.Start(start)!;
        var told = reader.StandardError.ReadToEndAsync();
        var output = await reader.StandardOutput.ReadToEndAsync();
        await reader.WaitForExitAsync();
        Assert.True(reader.ExitCode == 0, $"python3-icalendar: {await told}");
        return [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line)!.AsObject())];
    }
}
