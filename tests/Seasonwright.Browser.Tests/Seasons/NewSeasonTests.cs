using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Seasons;

public sealed class NewSeasonTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Fact]
    public async Task The_year_is_drawn_as_answers_come_and_a_double_click_starts_one_season()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await page.FillAsync("#f-name", "Harbour Vale");
        await page.FillAsync("#f-weeks", "44");
        await page.FillAsync("#f-first", "2027-07-05");
        await page.PressAsync("#f-first", "Tab");
        await Assertions.Expect(page.Locator("#drawn > p")).ToContainTextAsync("44 weeks");
        await Assertions.Expect(page.Locator("#drawn svg.drawing")).ToBeVisibleAsync();

        await page.DblClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/season/*/fixtures?new=true");
        // The second press may still be on its way: it is let arrive, and looked at from another window.
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        await using var list = await browser.OpenAsync(workspace);
        await Assertions.Expect(list.Page.Locator(".seasons li")).ToHaveCountAsync(1);
        await Assertions.Expect(list.Page.Locator(".seasons a")).ToHaveTextAsync("2027-28");
    }

    [Theory]
    [InlineData("first", "1899-01-01", "1950")]
    [InlineData("weeks", "0", "1 to 60")]
    [InlineData("weeks", "61", "1 to 60")]
    [InlineData("name", "", "Give the team a name")]
    [InlineData("last", "2020-01-01", "before the first")]
    public async Task What_cannot_be_is_told_beside_the_field_and_everything_typed_stays(string field, string typed, string told)
    {
        await using var window = await browser.OpenAsync(demo.Workspace, "/seasons/new");
        var page = window.Page;
        await page.SelectOptionAsync("#f-team", "");
        await page.FillAsync("#f-name", "Harbour Vale");
        await page.FillAsync("#f-title", "Centenary");
        await page.FillAsync($"#f-{field}", typed);
        await page.ClickAsync("button[value=take]");
        await Assertions.Expect(page.Locator($"#f-{field}-wrong")).ToContainTextAsync(told);
        await Assertions.Expect(page.Locator($"#f-{field}")).ToHaveValueAsync(typed);
        await Assertions.Expect(page.Locator("#f-title")).ToHaveValueAsync("Centenary");
        await window.AssertAccessibleAsync();
    }
}
