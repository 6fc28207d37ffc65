using System.Text.Json.Nodes;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>The second reader of calendars: Debian's python3-icalendar, by the script in tests/Oracles.</summary>
internal static class CalendarOracle
{
    public static async Task<IReadOnlyList<JsonObject>> ReadAsync(IReadOnlyList<string> files)
    {
        var output = await Outside.RunAsync("/usr/bin/python3", files.Prepend(Path.Combine(AppContext.BaseDirectory, "Oracles", "read-calendar.py")));
        return [.. output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonNode.Parse(line)!.AsObject())];
    }
}
