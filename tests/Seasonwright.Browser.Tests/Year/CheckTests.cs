using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Year;

/// <summary>The rulebook beside the chart: counted while painting, opened on asking, mended by what it proposes.</summary>
public sealed class CheckTests(BrowserFixture browser)
{
    [Fact]
    public async Task Findings_wait_behind_a_count_and_a_remedy_is_seen_before_it_is_taken()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var page = year.Page;
        var check = page.Locator(".acts button[aria-pressed]", new() { HasTextString = "Check" });
        var before = await CountAsync(check);
        await Assertions.Expect(page.Locator("#findings-w0")).ToHaveCountAsync(0);

        // A week of five times the load is a finding at once, behind the count.
        var number = await year.NumberAsync();
        await OverloadAsync(year);
        await Assertions.Expect(check).Not.ToHaveTextAsync($"Check · {before}");
        var painted = await CountAsync(check);
        Assert.True(painted > before);

        await check.ClickAsync();
        await Assertions.Expect(page.Locator("#findings-w32")).ToHaveCountAsync(1);
        // Five rules at most are shown at once, each once.
        Assert.InRange(await page.Locator(".panel .finding").CountAsync(), 1, 5);
        var rise = page.Locator(".finding", new() { HasTextString = "130 %" }).First;
        await rise.GetByRole(AriaRole.Button, new() { Name = "Show a remedy" }).ClickAsync();
        await Assertions.Expect(page.Locator(".preview-line")).ToContainTextAsync("Set the load of week 33");
        await Assertions.Expect(page.Locator(".marked-week")).ToHaveCountAsync(1);
        // Seen, not done: the season still has the load.
        Assert.Equal(number + 1, await year.NumberAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it" }).ClickAsync();
        await year.AfterAsync(number + 1);
        await Assertions.Expect(page.Locator(".preview-line")).ToHaveCountAsync(0);
        Assert.True(await CountAsync(check) < painted);

        // A reason silences one, and it can be shown again.
        var now = await CountAsync(check);
        var first = page.Locator(".finding").First;
        await first.Locator("summary", new() { HasTextString = "Live with it" }).First.ClickAsync();
        await first.GetByLabel("Reason").First.FillAsync("Agreed with the head coach");
        await first.GetByRole(AriaRole.Button, new() { Name = "Keep with this reason" }).First.ClickAsync();
        await Assertions.Expect(check).ToHaveTextAsync($"Check · {now - 1}");
        await page.Locator(".panel > details > summary").ClickAsync();
        await Assertions.Expect(page.Locator(".panel > details")).ToContainTextAsync("Agreed with the head coach");
        await page.GetByRole(AriaRole.Button, new() { Name = "Show again" }).ClickAsync();
        await Assertions.Expect(check).ToHaveTextAsync($"Check · {now}");
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task A_stop_shows_at_once_and_holds_publishing_back_until_it_is_released()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var page = year.Page;
        await Assertions.Expect(page.Locator(".stop-line")).ToHaveCountAsync(0);
        await year.TeamAsync("""
            [{"edit":"setRuleParameter","parameter":"match-gap-short:preset","value":"stop_72"},
             {"edit":"setRuleParameter","parameter":"match-gap-short:preset_date","value":"2026-07-01"},
             {"edit":"setRuleParameter","parameter":"match-gap-short:hard_h","value":"94"}]
            """);
        await Assertions.Expect(page.Locator(".stop-line").First).ToContainTextAsync("hours");

        await page.GetByRole(AriaRole.Button, new() { Name = "Publish", Exact = true }).ClickAsync();
        var publish = page.Locator(".panel form[data-draft$='-publish'] button");
        await Assertions.Expect(publish).ToBeDisabledAsync();
        // Whoever publishes sees what was found.
        await Assertions.Expect(page.Locator(".panel .finding").First).ToContainTextAsync("hours");
        await Assertions.Expect(page.Locator("#findings-w0")).ToHaveCountAsync(1);
        var stops = int.Parse((await page.Locator(".year > .stop-line b").InnerTextAsync()).Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(stops > 1, $"{stops} stops");
        await page.Locator(".year > .stop-line button").First.ClickAsync();
        var stop = page.Locator(".finding").First;
        await stop.GetByText($"{stops - 1} more of this rule").ClickAsync();
        await stop.GetByText($"Record a release of all {stops}").ClickAsync();
        var release = stop.Locator("form").Last;
        await release.GetByLabel("Reason").FillAsync("Minutes are capped");
        await release.GetByLabel("Released by").FillAsync("Mara Lindt");
        await release.GetByRole(AriaRole.Button, new() { Name = "Record the release" }).ClickAsync();
        await Assertions.Expect(page.Locator(".year > .stop-line")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Check");
        await page.GetByRole(AriaRole.Button, new() { Name = "Publish", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel h2").First).ToHaveTextAsync("Publish");
        await Assertions.Expect(publish).ToBeEnabledAsync();
        Assert.Empty(year.Window.Complaints);
    }

    /// <summary>The week of a finding is where the cursor goes, at every zoom, and the findings stay open.</summary>
    [Theory]
    [InlineData("Whole season")]
    [InlineData("Weeks")]
    public async Task A_finding_leads_to_its_week(string zoom)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var page = year.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = zoom, Exact = true }).First.ClickAsync();
        await page.Locator(".acts button", new() { HasTextString = "Check" }).ClickAsync();
        var link = page.Locator(".findings > li > .finding-head button").Last;
        var week = int.Parse((await link.InnerTextAsync()).Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        await link.ClickAsync();
        await Assertions.Expect(page.Locator("svg.drawing")).ToHaveAttributeAsync("aria-activedescendant", $"weeks-w{week - 1}");
        await Assertions.Expect(page.Locator($"#weeks-w{week - 1}")).ToBeInViewportAsync();
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Check");
    }

    [Theory]
    [InlineData(360, true)]
    [InlineData(768, false)]
    [InlineData(1440, false)]
    public async Task Findings_and_a_remedy_can_be_read_by_everyone_and_the_changed_weeks_are_in_sight(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace, width, dark);
        var page = year.Page;
        await OverloadAsync(year);
        await page.Locator(".acts button", new() { HasTextString = "Check" }).ClickAsync();
        await page.Locator("summary", new() { HasTextString = "Why?" }).First.ClickAsync();
        await page.Locator("summary", new() { HasTextString = "Live with it" }).First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Show a remedy" }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take it" })).ToBeInViewportAsync();
        await Assertions.Expect(page.Locator(".marked-week")).ToBeInViewportAsync();
        await year.Window.AssertFitsAsync();
        await year.Window.AssertAccessibleAsync(".panel", ".preview-line");
        Assert.Empty(year.Window.Complaints);
    }

    /// <summary>A load in week 33 that the rulebook has something against.</summary>
    private static async Task OverloadAsync(YearWindow year)
    {
        var number = await year.NumberAsync();
        await year.Page.ClickAsync("#weeks-w32");
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Week 33");
        await year.Page.FillAsync("#load", "130");
        await year.Page.PressAsync("#load", "Tab");
        await year.AfterAsync(number);
    }

    private static async Task<int> CountAsync(ILocator check) =>
        (await check.TextContentAsync())!.Split('·') is [_, var count] ? int.Parse(count, System.Globalization.CultureInfo.InvariantCulture) : 0;
}
