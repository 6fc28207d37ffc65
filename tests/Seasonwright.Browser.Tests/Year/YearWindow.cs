using System.Globalization;
using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Year;

/// <summary>A window on a season's Year page, and the hand that works in it.</summary>
internal sealed class YearWindow(BrowserWindow window) : IAsyncDisposable
{
    public IPage Page => window.Page;

    public BrowserWindow Window => window;

    public static async Task<YearWindow> OpenAsync(BrowserFixture browser, RunningWorkspace workspace, int width = 1440, bool dark = false, bool touch = false)
    {
        var opened = new YearWindow(await browser.OpenAsync(workspace, "/year", width, dark: dark, touch: touch));
        await opened.LiveAsync();
        return opened;
    }

    /// <summary>Waits until the page's script has taken hold and the drawing has its window's width.</summary>
    public async Task LiveAsync()
    {
        await Page.WaitForSelectorAsync(".year[data-live]");
        await Page.WaitForFunctionAsync("() => Math.abs(document.querySelector('svg.drawing').viewBox.baseVal.width - Math.max(680, document.querySelector('.chart').clientWidth)) < 2");
    }

    public async Task<long> NumberAsync() => long.Parse((await Page.GetAttributeAsync(".year", "data-number"))!, CultureInfo.InvariantCulture);

    /// <summary>Waits until the page shows a later log number.</summary>
    public Task AfterAsync(long number) => Page.WaitForFunctionAsync("n => Number(document.querySelector('.year').dataset.number) > n", number);

    /// <summary>Makes an edit of the team, as its pages do, in their form of docs/edits.md.</summary>
    public async Task TeamAsync(string edits)
    {
        var answer = await Page.EvaluateAsync<int>("""
            async edits => (await fetch(`/season/${document.querySelector('.year').dataset.season}/gestures`, {
              method: 'POST', headers: { 'Content-Type': 'application/json' },
              body: JSON.stringify({ id: crypto.randomUUID(), basedOn: Number(document.querySelector('.year').dataset.teamNumber), on: 'team', act: 'edit', edits: JSON.parse(edits) }),
            })).status
            """, edits);
        Assert.Equal(200, answer);
    }

    /// <summary>What a screen reader says of a cell.</summary>
    public async Task<string> SaysAsync(string cell) => (await Page.GetAttributeAsync("#" + cell, "aria-label"))!;

    /// <summary>Presses on the middle of a cell, moves and lets go.</summary>
    public async Task DragAsync(string from, string to, double fromHeight = 0.5, double toHeight = 0.5)
    {
        await AtAsync(from, fromHeight);
        await Page.Mouse.DownAsync();
        await AtAsync(to, toHeight);
        await Page.Mouse.UpAsync();
    }

    public ValueTask DisposeAsync() => window.DisposeAsync();

    private async Task AtAsync(string cell, double height)
    {
        await Page.Locator("#" + cell).ScrollIntoViewIfNeededAsync();
        var box = (await Page.Locator("#" + cell).BoundingBoxAsync())!;
        await Page.Mouse.MoveAsync((float)(box.X + box.Width / 2), (float)(box.Y + box.Height * height), new MouseMoveOptions { Steps = 4 });
    }
}
