using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Squad;

/// <summary>A player's running tests, told and taken back. It is Monday 18 October 2027.</summary>
public sealed class RunsTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_test_is_told_refused_by_field_and_taken_back()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", 1024);
        var page = window.Page;
        await page.ClickAsync("text=Ylva Brennick");
        await page.ClickAsync("text=Tell a running test");
        await page.FillAsync("#f-run-metres", "1500");
        await page.FillAsync("#f-run-time", "0:25");
        await page.ClickAsync("text=Keep the test");
        await Assertions.Expect(page.Locator("#f-run-time-wrong")).ToContainTextAsync("3 to 15 min");
        await page.FillAsync("#f-run-time", "6:15");
        await page.ClickAsync("text=Keep the test");
        await Assertions.Expect(page.Locator("section[aria-labelledby=runs]")).ToContainTextAsync("4 m/s");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await page.ClickAsync("text=Take the test back");
        await Assertions.Expect(page.Locator("section[aria-labelledby=runs]")).ToContainTextAsync("No running test yet");
        Assert.Empty(window.Complaints);
    }
}
