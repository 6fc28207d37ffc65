using System.Text.Json;
using Microsoft.Playwright;
using Seasonwright.Browser.Tests;

namespace Seasonwright.Bench.Browser;

/// <summary>A window on the demo's Year page with the stopwatch in it, and the hand that works there.</summary>
internal sealed class MeasuredYear(IPage page) : IAsyncDisposable
{
    // An edit that changes nothing would be waited for without end.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    public IPage Page => page;

    /// <param name="live">False keeps the page as the server first sent it, for the plain way.</param>
    public static async Task<MeasuredYear> OpenAsync(IBrowser browser, WorkspaceProcess workspace, bool live = true)
    {
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = workspace.Address.GetLeftPart(UriPartial.Authority),
            ViewportSize = new ViewportSize { Width = 1440, Height = 1100 },
        });
        var page = await context.NewPageAsync();
        if (!live) await page.RouteAsync("**/blazor.web*.js", route => route.AbortAsync());
        await page.GotoAsync("/year");
        if (live)
        {
            await page.WaitForSelectorAsync(".year[data-live]");
            await page.WaitForFunctionAsync("() => Math.abs(document.querySelector('svg.drawing').viewBox.baseVal.width - Math.max(680, document.querySelector('.chart').clientWidth)) < 2");
        }
        using var script = new StreamReader(typeof(MeasuredYear).Assembly.GetManifestResourceStream("stopwatch.js")!);
        await page.EvaluateAsync(await script.ReadToEndAsync());
        return new MeasuredYear(page);
    }

    /// <summary>Runs the hand's last movement under the stopwatch.</summary>
    /// <param name="until">The event the edit ends with.</param>
    public async Task<JsonElement> MeasureAsync(string until, Func<Task> act)
    {
        await page.EvaluateAsync("until => stopwatch.arm(until)", until);
        await act();
        return (await page.EvaluateAsync("() => stopwatch.times()").WaitAsync(Patience))!.Value;
    }

    /// <summary>The pointer goes to a part of a cell.</summary>
    public async Task AtAsync(string selector, double height = 0.5, double across = 0.5)
    {
        var box = (await page.Locator(selector).First.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync((float)(box.X + box.Width * across), (float)(box.Y + box.Height * height), new MouseMoveOptions { Steps = 4 });
    }

    public async ValueTask DisposeAsync() => await page.Context.CloseAsync();
}
