using System.Globalization;
using Microsoft.Playwright;
using Seasonwright.Browser.Tests;

namespace Seasonwright.Bench.Browser;

/// <summary>From the click that redates the whole season to the frame that shows every track anew, beside fetching the page anew.</summary>
internal static class RedateProof
{
    private const int WarmUp = 6;

    public static async Task Run(IBrowser browser, string program, int redates)
    {
        await using var workspace = await WorkspaceProcess.StartAsync(demo: true, program: program);
        var (acknowledged, frame, rows, plain) = (new Sample(), new Sample(), new Sample(), new Sample());
        await using var year = await MeasuredYear.OpenAsync(browser, workspace);
        await year.Page.Locator("header").GetByRole(AriaRole.Button, new() { Name = "Season", Exact = true }).ClickAsync();
        await year.Page.WaitForSelectorAsync("#s-first");
        for (var round = 0; round < WarmUp + redates; round++)
        {
            await year.Page.FillAsync("#s-first", round % 2 == 0 ? "2027-07-12" : "2027-07-05");
            var button = (await year.Page.Locator("form[data-edit*=redate] button").BoundingBoxAsync())!;
            await year.Page.Mouse.MoveAsync(button.X + button.Width / 2, button.Y + button.Height / 2);
            var times = await year.MeasureAsync("click", async () =>
            {
                await year.Page.Mouse.DownAsync();
                await year.Page.Mouse.UpAsync();
            });
            var fetched = await year.Page.EvaluateAsync<double>("async () => { const start = performance.now(); await (await fetch(location.pathname)).text(); return performance.now() - start; }");
            if (round < WarmUp) continue;
            acknowledged.Add(times.GetProperty("acknowledged").GetDouble());
            frame.Add(times.GetProperty("frame").GetDouble());
            rows.Add(times.GetProperty("rows").GetDouble());
            plain.Add(fetched);
        }
        Console.WriteLine($"{frame.Count} redates by a week, there and back, the plan moving along. Milliseconds since the click: median / 95th / 99th.");
        Console.WriteLine();
        Console.WriteLine("| | acknowledged, on the disk | **frame with the year drawn anew** | rows repainted, median |");
        Console.WriteLine("|---|---|---|---|");
        Console.WriteLine($"| redate on the live page | {acknowledged} | **{frame}** | {rows.At(50).ToString("0", CultureInfo.InvariantCulture)} |");
        Console.WriteLine($"| compared with: the page fetched anew, nothing parsed or painted | | {plain} | |");
    }
}
