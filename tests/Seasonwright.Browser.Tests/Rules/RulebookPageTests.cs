using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Rules;

/// <summary>The page of the rulebook.</summary>
public sealed class RulebookPageTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Theory]
    [InlineData(360, true)]
    [InlineData(1440, false)]
    public async Task The_page_fits_and_can_be_read_by_everyone(int width, bool dark)
    {
        await using var window = await OpenAsync(demo.Workspace, width, dark);
        foreach (var rule in new[] { "matches-per-week", "concussion-clearance", "weekly-hours-preset" }) await window.Page.ClickAsync($"#{rule} > summary");
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_rule_is_found_by_its_state_and_by_words_with_and_without_a_press()
    {
        await using var window = await OpenAsync(demo.Workspace);
        var page = window.Page;
        await Assertions.Expect(page.Locator(".rule:visible")).ToHaveCountAsync(70);
        await page.FillAsync("#f-q", "hamstring");
        await Assertions.Expect(page.Locator(".rule:visible")).Not.ToHaveCountAsync(70);
        await Assertions.Expect(page.Locator("#hamstring-eccentric-gap")).ToBeVisibleAsync();
        var typed = await page.Locator(".rule:visible").CountAsync();
        await page.PressAsync("#f-q", "Enter");
        await page.WaitForURLAsync("**q=hamstring");
        Assert.Equal(typed, await page.Locator(".rule:visible").CountAsync());
        await page.FillAsync("#f-q", "no such words");
        await Assertions.Expect(page.Locator("#none-found")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Waiting" }).ClickAsync();
        await page.ClickAsync("text=Show all");
        // A rule that waits is never told as one that found nothing.
        Assert.All(await page.Locator(".rule-state").AllInnerTextsAsync(), state => Assert.StartsWith("Needs ", state, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Where_a_rule_speaks_the_year_opens_in_that_week()
    {
        await using var window = await OpenAsync(demo.Workspace);
        var page = window.Page;
        await page.ClickAsync("#matches-per-week > summary");
        var link = page.Locator("#matches-per-week .finds a").Last;
        var week = await link.InnerTextAsync();
        await link.ClickAsync();
        await Assertions.Expect(page.Locator(".panel h2").First).ToContainTextAsync(week);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_figure_is_changed_refused_where_it_cannot_be_and_given_back_its_default()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace);
        var page = window.Page;
        await page.ClickAsync("#weekly-ramp > summary");
        await page.FillAsync("[id='weekly-ramp.caution_up']", "12,5");
        // Enter saves, though the first button that is seen may be another one.
        await page.PressAsync("[id='weekly-ramp.caution_up']", "Enter");
        await Assertions.Expect(page.Locator("#weekly-ramp .figure.own")).ToContainTextAsync("default: 15 % · set by You, Mon 18 Oct 2027");
        await Assertions.Expect(page.Locator("[id='weekly-ramp.caution_up']")).ToHaveValueAsync("12.5");

        await page.FillAsync("[id='weekly-ramp.warning_up']", "a lot");
        await page.FillAsync("[id='weekly-ramp.caution_points']", "8");
        await page.ClickAsync("#weekly-ramp .main-act");
        await Assertions.Expect(page.Locator("#weekly-ramp .wrong")).ToContainTextAsync("“a lot” cannot stand here: a number from 0 to 1000 can");
        await Assertions.Expect(page.Locator("[id='weekly-ramp.warning_up']")).ToHaveValueAsync("a lot");
        await Assertions.Expect(page.Locator("[id='weekly-ramp.caution_points']")).ToHaveValueAsync("8");
        await window.AssertAccessibleAsync();
        await page.GotoAsync(page.Url.Split('#')[0]);
        await Assertions.Expect(page.Locator("[id='weekly-ramp.caution_points']")).ToHaveValueAsync("10");

        await page.ClickAsync("#weekly-ramp [value=caution_up]");
        await Assertions.Expect(page.Locator("#weekly-ramp .figure").Nth(1)).ToContainTextAsync("back to default by You");
        await Assertions.Expect(page.Locator("[id='weekly-ramp.caution_up']")).ToHaveValueAsync("15");
        await Assertions.Expect(page.Locator("#weekly-ramp .figure.own")).ToHaveCountAsync(0);

        // Each is possible, both together are not.
        await page.FillAsync("[id='weekly-ramp.warning_up']", "10 %");
        await page.ClickAsync("#weekly-ramp .main-act");
        await Assertions.Expect(page.Locator("#weekly-ramp .wrong")).ToContainTextAsync("“Rise that gives a caution, as a share” may not be above “Rise that gives a warning, as a share”");
        await page.FillAsync("[id='weekly-ramp.warning_up']", "20");
        await page.ClickAsync("#match-gap-short > summary");
        await page.SelectOptionAsync("[id='match-gap-short.preset']", "stop_72");
        await page.ClickAsync("#match-gap-short .main-act");
        await Assertions.Expect(page.Locator("#match-gap-short .wrong")).ToContainTextAsync("Give the day from which these limits hold");
        await page.GotoAsync(page.Url.Split('#')[0]);

        await page.ClickAsync("#weekly-ramp > summary");
        await page.SelectOptionAsync("[id='weekly-ramp.on']", "no");
        await page.ClickAsync("#weekly-ramp .main-act");
        await Assertions.Expect(page.Locator("#weekly-ramp .rule-state")).ToHaveTextAsync("Off for this team");
        await Assertions.Expect(page.Locator("[id='concussion-clearance.on']")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#concussion-clearance")).ToContainTextAsync("nobody may switch it off or change its figures");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task What_was_accepted_is_shown_again_and_after_three_times_it_is_offered_as_our_way()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace);
        var page = window.Page;
        var rule = page.Locator("#unloading-size");
        // Figures that no unloading week of the demo's competition keeps to.
        await page.ClickAsync("#unloading-size > summary");
        await page.FillAsync("[id='unloading-size.competition_min_drop']", "0");
        await page.FillAsync("[id='unloading-size.competition_max_drop']", "5");
        await page.ClickAsync("#unloading-size .main-act");
        await Assertions.Expect(rule.Locator(".figure.own")).ToHaveCountAsync(2);
        var keys = await rule.Locator(".finds > li[id]").EvaluateAllAsync<string[]>("rows => rows.map(row => row.id)");
        foreach (var key in keys[..3]) await AcceptAsync(page, key, "competition_min_drop=0; competition_max_drop=0.05");
        await page.ReloadAsync();
        await page.ClickAsync(".offered a");
        Assert.True(keys.Length > 3);
        await Assertions.Expect(rule.Locator(".rule-state")).ToContainTextAsync("3 accepted");
        await Assertions.Expect(rule.Locator(".settle")).ToContainTextAsync("accepted this 3 times in this season");
        await window.AssertAccessibleAsync();

        await rule.GetByRole(AriaRole.Button, new() { Name = "Show it again" }).First.ClickAsync();
        await Assertions.Expect(rule.Locator(".rule-state")).ToContainTextAsync("2 accepted");
        await Assertions.Expect(rule.Locator(".finds > li[id]")).ToHaveCountAsync(keys.Length - 2);
        await Assertions.Expect(rule.Locator(".settle")).ToHaveCountAsync(0);

        foreach (var key in keys[..3]) await AcceptAsync(page, key, "competition_min_drop=0; competition_max_drop=0.05");
        await page.ReloadAsync();
        await rule.GetByRole(AriaRole.Button, new() { Name = "Our way from now on" }).ClickAsync();
        await Assertions.Expect(rule.Locator(".settle")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("[id='unloading-size.competition_max_drop']")).Not.ToHaveValueAsync("5");
        await Assertions.Expect(rule).ToContainTextAsync("found no more");
        Assert.True(await rule.Locator(".finds > li[id]").CountAsync() < keys.Length - 2);
        Assert.Empty(window.Complaints);
    }

    private static async Task AcceptAsync(IPage page, string finding, string figures)
    {
        var season = page.Url.Split("/season/")[1].Split('/')[0];
        await page.EvaluateAsync("""
            async ([season, finding, figures]) => {
              const edit = { edit: 'acceptFinding', finding, acceptance: { reason: 'Our players know it', size: 999, figures } };
              const answer = await fetch(`/season/${season}/gestures`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ id: crypto.randomUUID(), basedOn: 1e6, on: 'season', act: 'edit', edits: [edit] }) });
              if (!answer.ok) throw new Error(await answer.text());
            }
            """, new[] { season, finding, figures });
    }

    private async Task<BrowserWindow> OpenAsync(RunningWorkspace workspace, int width = 1440, bool dark = false)
    {
        var window = await browser.OpenAsync(workspace, "/year", width, dark: dark);
        await window.Page.GetByRole(AriaRole.Link, new() { Name = "Rulebook" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator("h1")).ToHaveTextAsync("Rulebook");
        return window;
    }
}
