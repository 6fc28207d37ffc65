using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Seasons;

public sealed class SeasonListTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Fact]
    public async Task The_demo_says_it_is_invented_gives_a_next_season_and_goes_after_one_question()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace);
        var page = window.Page;
        await Assertions.Expect(page.Locator(".invented")).ToContainTextAsync("Invented");
        await page.GetByRole(AriaRole.Link, new() { Name = "Next season from this one" }).ClickAsync();
        await Assertions.Expect(page.Locator("#drawn svg.drawing")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".shares h2")).ToHaveTextAsync(["Comes along", "Stays behind"]);
        await Assertions.Expect(page.Locator(".shares section").Nth(1)).ToContainTextAsync("Matches: ");
        await window.AssertAccessibleAsync();
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/season/*");
        await page.GotoAsync("/");
        await Assertions.Expect(page.Locator(".seasons li")).ToHaveCountAsync(2);

        await page.GetByRole(AriaRole.Link, new() { Name = "Remove the demo" }).ClickAsync();
        await window.AssertAccessibleAsync();
        await page.ClickAsync("button.danger");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("No season yet");
    }

    [Theory]
    [InlineData(390, false)]
    [InlineData(1440, true)]
    public async Task Published_versions_can_be_looked_at(int width, bool dark)
    {
        await using var window = await browser.OpenAsync(demo.Workspace, "/year", width, dark: dark);
        var page = window.Page;
        await page.WaitForSelectorAsync(".year[data-live]");
        await page.GetByRole(AriaRole.Button, new() { Name = "Publish", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Look at the published versions" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("Version 2");
        // The demo's changes since: a match moved and a note.
        await Assertions.Expect(page.Locator("ul.changes").Last.Locator("li")).ToHaveCountAsync(2);
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Version 1" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("Version 1");
        await Assertions.Expect(page.Locator("svg.drawing")).ToBeVisibleAsync();
        await page.GotoAsync(new Uri(new Uri(page.Url), "99").ToString());
        await Assertions.Expect(page.Locator("h1")).Not.ToContainTextAsync("Version");
    }

    [Theory]
    [InlineData("/", 360, false)]
    [InlineData("/", 768, true)]
    [InlineData("/", 1440, false)]
    [InlineData("/seasons/new", 360, true)]
    [InlineData("/seasons/new", 768, false)]
    [InlineData("/seasons/new", 1440, true)]
    public async Task Pages_fit_and_can_be_read_by_everyone(string path, int width, bool dark)
    {
        await using var window = await browser.OpenAsync(demo.Workspace, path, width, dark: dark);
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Year_in_the_rail_leads_to_the_season_or_to_the_list_while_there_is_none()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var empty = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/year");
        await using var other = await browser.OpenAsync(empty, "/year");
        Assert.StartsWith("/season/", new Uri(window.Page.Url).AbsolutePath, StringComparison.Ordinal);
        Assert.Equal("/", new Uri(other.Page.Url).AbsolutePath);
    }
}
