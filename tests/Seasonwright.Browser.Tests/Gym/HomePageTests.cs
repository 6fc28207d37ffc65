using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>A player's running test, and home programmes: who gets what, and what cannot be. It is Monday 18 October 2027.</summary>
public sealed class HomePageTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_test_is_told_and_a_programme_written_refused_by_field_kept_and_seen_by_player()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", 390, dark: true);
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

        await page.ClickAsync(".rail >> text=Gym");
        await page.GetByRole(AriaRole.Link, new() { Name = "Home programmes" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Mid-season break", Exact = true }).ClickAsync();
        // By hand: 1,500 m in 375 s are 4 m/s, 95 % of that is 3.8: 300 m in 79 s.
        await Assertions.Expect(page.Locator(".home-preview")).ToContainTextAsync("6 x 300 m in 79 s");
        await Assertions.Expect(page.Locator(".home-preview")).ToContainTextAsync("Free");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();

        await page.ClickAsync("text=All home programmes >> nth=0");
        await page.ClickAsync("text=New home programme");
        await page.FillAsync("#f-weeks", "7");
        await page.FillAsync("#f-run-Monday", "fast");
        await page.FillAsync("#f-dumbbells", "heavy");
        await page.ClickAsync("text=Keep the programme");
        await Assertions.Expect(page.Locator("#f-weeks-wrong")).ToContainTextAsync("1 to 6 weeks");
        await Assertions.Expect(page.Locator("#f-run-Monday-wrong")).ToContainTextAsync("is no run");
        await Assertions.Expect(page.Locator("#f-dumbbells-wrong")).ToContainTextAsync("tells no weights");
        await window.AssertAccessibleAsync();
        await page.FillAsync("#f-name", "Easter");
        await page.FillAsync("#f-weeks", "1");
        await page.FillAsync("#f-run-Monday", "25min 70%");
        await page.FillAsync("#f-dumbbells", "");
        await page.ClickAsync("text=Keep the programme");
        await Assertions.Expect(page.Locator(".recorded")).ToContainTextAsync("Kept");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Easter");
        await page.ClickAsync("text=Remove Easter");
        await Assertions.Expect(page.Locator(".recorded")).ToContainTextAsync("removed");
        Assert.Empty(window.Complaints);
    }
}
