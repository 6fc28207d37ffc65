using System.Globalization;

namespace Seasonwright.Web.Host;

/// <summary>How the workspace was started.</summary>
/// <param name="Port">0 to 65535; 0 takes a free one.</param>
/// <param name="Data">The data folder; null for the user's.</param>
/// <param name="Demo">Whether the first start brings the demo team.</param>
/// <param name="Browser">Whether a browser is opened where there is a desktop.</param>
/// <param name="Today">The day the pages take for today; null for the true one.</param>
public sealed record StartOptions(int Port = 5210, string? Data = null, bool Demo = true, bool Browser = true, DateOnly? Today = null, bool Help = false)
{
    /// <summary>Reads the command line.</summary>
    /// <param name="args">As given.</param>
    /// <param name="problem">What is wrong with it and how to mend it.</param>
    /// <returns>Null after a problem.</returns>
    public static StartOptions? Read(IReadOnlyList<string> args, out string problem)
    {
        var options = new StartOptions();
        problem = "";
        for (var i = 0; i < args.Count; i++)
        {
            var value = i + 1 < args.Count ? args[i + 1] : null;
            switch (args[i])
            {
                case "--no-demo": options = options with { Demo = false }; break;
                case "--no-browser": options = options with { Browser = false }; break;
                case "--help" or "-h": options = options with { Help = true }; break;
                case "--port" when int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var port) && port <= ushort.MaxValue:
                    options = options with { Port = port }; i++; break;
                case "--data" when !string.IsNullOrWhiteSpace(value): options = options with { Data = value }; i++; break;
                case "--today" when DateOnly.TryParseExact(value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day):
                    options = options with { Today = day }; i++; break;
                case "--port" or "--data" or "--today":
                    problem = Words.Say($"start.bad{args[i][1..]}", value ?? "");
                    return null;
                default:
                    problem = Words.Say("start.unknown", args[i]);
                    return null;
            }
        }
        return options;
    }
}
