using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Rules;

/// <summary>The page of the rulebook.</summary>
public sealed class RulebookPageTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Theory]
    [InlineData(360, true)]
    [InlineData(768, false)]
    [InlineData(1440, true)]
    [InlineData(1440, false)]
    public async Task The_page_fits_and_can_be_read_by_everyone(int width, bool dark)
    {
        await using var window = await OpenAsync(demo.Workspace, width, dark);
        foreach (var rule in new[] { "matches-per-week", "concussion-clearance", "weekly-hours-preset" }) await window.Page.ClickAsync($"#{rule} > summary");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    private async Task<BrowserWindow> OpenAsync(RunningWorkspace workspace, int width = 1440, bool dark = false)
    {
        var window = await browser.OpenAsync(workspace, "/year", width, dark: dark);
        await window.Page.GetByRole(AriaRole.Link, new() { Name = "Rulebook" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator("h1")).ToHaveTextAsync("Rulebook");
        return window;
    }
}
