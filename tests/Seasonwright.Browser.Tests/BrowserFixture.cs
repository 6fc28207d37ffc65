using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Seasonwright.Browser.Tests.BrowserFixture))]

namespace Seasonwright.Browser.Tests;

/// <summary>One Chromium for all tests; each test opens windows of its own in it.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await Chromium.LaunchAsync(playwright);
        // As long as everything else is waited for: the machine may be busy.
        Assertions.SetDefaultExpectTimeout(20_000);
    }

    /// <summary>Opens a fresh window, with nothing remembered, on a page of a workspace.</summary>
    /// <param name="path">For instance <c>/seasons/new</c>.</param>
    /// <param name="width">CSS px; 360, 768 and 1440 are the widths we promise.</param>
    /// <param name="touch">A finger instead of a mouse.</param>
    /// <param name="script">Whether the pages' scripts run.</param>
    public async Task<BrowserWindow> OpenAsync(RunningWorkspace workspace, string path = "/", int width = 1440, int height = 900, bool dark = false, bool touch = false, bool script = true)
    {
        var context = await browser!.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = workspace.Address.GetLeftPart(UriPartial.Authority),
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            HasTouch = touch,
            JavaScriptEnabled = script,
        });
        context.SetDefaultTimeout(20_000);
        var window = new BrowserWindow(await context.NewPageAsync());
        await window.Page.GotoAsync(path);
        return window;
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.CloseAsync();
        playwright?.Dispose();
    }
}
