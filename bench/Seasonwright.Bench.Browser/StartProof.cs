using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using Seasonwright.Browser.Tests;

namespace Seasonwright.Bench.Browser;

/// <summary>From starting the published program to its address, its first page, and a Year page that answers the hand.</summary>
internal static class StartProof
{
    public static async Task Run(IBrowser browser, string program, int starts)
    {
        var data = Directory.CreateTempSubdirectory("seasonwright-start-").FullName;
        string[] kinds = ["first start: folder made, demo put in", "later starts: demo there"];
        var (address, list, year, alive, least) = (Samples(), Samples(), Samples(), Samples(), new Sample());
        for (var start = 0; start < starts; start++)
        {
            var folder = Path.Combine(data, start.ToString(CultureInfo.InvariantCulture));
            foreach (var kind in kinds)
            {
                var watch = Stopwatch.StartNew();
                await using var workspace = await WorkspaceProcess.StartAsync(demo: true, data: folder, program: program);
                address[kind].Add(watch.Elapsed.TotalMilliseconds);
                using var client = new HttpClient { BaseAddress = new Uri(workspace.Address.GetLeftPart(UriPartial.Authority)) };
                await client.GetStringAsync("/");
                list[kind].Add(watch.Elapsed.TotalMilliseconds);
                await client.GetStringAsync("/year");
                year[kind].Add(watch.Elapsed.TotalMilliseconds);
                await using (await MeasuredYear.OpenAsync(browser, workspace)) alive[kind].Add(watch.Elapsed.TotalMilliseconds);
            }
            var bare = Stopwatch.StartNew();
            using var help = Process.Start(new ProcessStartInfo("dotnet", [program, "--help"]) { UseShellExecute = false, RedirectStandardOutput = true })!;
            await help.StandardOutput.ReadToEndAsync();
            await help.WaitForExitAsync();
            least.Add(bare.Elapsed.TotalMilliseconds);
        }
        Directory.Delete(data, recursive: true);
        Console.WriteLine($"{starts} starts of each kind, in turn. Milliseconds since the program was started: median / 95th / 99th.");
        Console.WriteLine();
        Console.WriteLine("| | address printed | list of seasons sent | Year page sent | Year page in a browser, answers the hand |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (var kind in kinds) Console.WriteLine($"| {kind} | {address[kind]} | {list[kind]} | {year[kind]} | {alive[kind]} |");
        Console.WriteLine($"| compared with: the same program asked for its help | {least} | | | |");

        Dictionary<string, Sample> Samples() => kinds.ToDictionary(kind => kind, _ => new Sample(), StringComparer.Ordinal);
    }
}
