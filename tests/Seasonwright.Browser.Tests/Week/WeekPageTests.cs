using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Week;

/// <summary>The Week page by mouse, keys and touch, with the demo. It is Monday 18 October 2027, a week with a match on Saturday.</summary>
public sealed class WeekPageTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(390, true)]
    [InlineData(768, false)]
    public async Task Sessions_are_put_changed_and_moved_by_pressing(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", width, 1024, dark: dark, touch: width == 768);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("Week 16");
        await Assertions.Expect(page.Locator(".rail a.active")).ToHaveTextAsync("Week");
        await Assertions.Expect(page.Locator(".day").Nth(5)).ToContainTextAsync("MD");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".week-page");

        await PutAsync(page, 3, 1, "Practice");
        await PutAsync(page, 3, 0, "Upper-body strength");
        await Assertions.Expect(page.Locator(".day").Nth(3).Locator(".session.ours", new() { HasText = "Upper-body strength" })).ToContainTextAsync("45 min");
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "15 min longer" }).ClickAsync();
        await Assertions.Expect(page.Locator(".session.ours", new() { HasText = "60 min" })).ToHaveCountAsync(1);
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "Cancelled" }).ClickAsync();
        await Assertions.Expect(page.Locator(".session.cancelled")).ToHaveCountAsync(1);
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "Takes place after all" }).ClickAsync();
        await Assertions.Expect(page.Locator(".session.cancelled")).ToHaveCountAsync(0);
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".week-page");

        // Moved by pressing another place; all fields; refused and kept as typed.
        await Slot(page, 2, 1).Locator(".adds-here").ClickAsync();
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Move Upper-body strength here" }).ClickAsync();
        await Assertions.Expect(Slot(page, 2, 1).Locator(".session")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Upper-body strength");
        await page.Locator(".panel summary").ClickAsync();
        await page.FillAsync("#s-start", "18:30");
        await page.FillAsync("#s-minutes", "900");
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(Slot(page, 2, 1).Locator(".session")).Not.ToContainTextAsync("18:30");
        await page.FillAsync("#s-minutes", "40");
        await page.Locator("[name='session.doses.1.quality']").CheckAsync();
        await page.FillAsync("[name='session.doses.1.sets']", "6");
        await page.FillAsync("[name='session.doses.1.top']", "82");
        await page.FillAsync("[name='session.waves.0.name']", "Early");
        await page.FillAsync("[name='session.waves.0.start']", "17:30");
        await window.AssertAccessibleAsync(".week-page");
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(Slot(page, 2, 1).Locator(".session")).ToContainTextAsync("18:30 · 40 min");
        await Assertions.Expect(page.Locator("[name='session.doses.1.sets']")).ToHaveValueAsync("6");
        await Assertions.Expect(page.Locator("[name='session.waves.0.start']")).ToHaveValueAsync("17:30");
        await page.Locator(".panel-foot").GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
        await Assertions.Expect(page.Locator(".sum tr", new() { HasText = "Maximum strength" })).ToContainTextAsync("2 of");
        await Assertions.Expect(page.Locator("#message-text")).ToContainTextAsync("Added Practice, Thu 21 Oct 2027, afternoon");
        await window.AssertFitsAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Sessions_are_dragged_moved_by_keys_and_taken_back()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", 1280, 900);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await PutAsync(page, 3, 0, "Power");
        var session = page.Locator(".session", new() { HasText = "Power" });
        await session.DragToAsync(Slot(page, 2, 1));
        await Assertions.Expect(Slot(page, 2, 1).Locator(".session", new() { HasText = "Power" })).ToHaveCountAsync(1);
        await session.FocusAsync();
        await page.Keyboard.PressAsync("Alt+ArrowRight");
        await Assertions.Expect(Slot(page, 3, 1).Locator(".session", new() { HasText = "Power" })).ToHaveCountAsync(1);
        await session.FocusAsync();
        await page.Keyboard.PressAsync("Alt+ArrowUp");
        await Assertions.Expect(Slot(page, 3, 0).Locator(".session", new() { HasText = "Power" })).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(Slot(page, 3, 1).Locator(".session", new() { HasText = "Power" })).ToHaveCountAsync(1);
        await session.FocusAsync();
        await page.Keyboard.PressAsync("Delete");
        await Assertions.Expect(session).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(session).ToHaveCountAsync(1);
        // Another week, and the one of another season's end.
        await page.GetByRole(AriaRole.Link, new() { Name = "Week after" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToContainTextAsync("Week 17");
        await page.GotoAsync(new Uri(page.Url).AbsolutePath.Replace("/17", "/99", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator(".sheet")).ToContainTextAsync("weeks 1 to");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_week_is_proposed_taken_and_repaired_where_something_cannot_stay()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", 1280, 900);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Propose" }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Proposed");
        await Assertions.Expect(page.Locator(".session.proposed")).Not.ToHaveCountAsync(0);
        await page.Locator(".panel details summary").First.ClickAsync();
        await window.AssertAccessibleAsync(".week-page");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".session.proposed")).ToHaveCountAsync(0);
        var dose = page.Locator(".session", new() { HasText = "Heavy small dose" });
        await Assertions.Expect(dose).ToHaveCountAsync(1);
        // The day before the match: said why not, with the rule; left, then moved all the same, and given way.
        await dose.DragToAsync(Slot(page, 4, 0));
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Heavy small dose should not lie there");
        await Assertions.Expect(page.Locator(".panel .note a").First).ToHaveAttributeAsync("href", new System.Text.RegularExpressions.Regex("rulebook", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(10)));
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Leave it" }).ClickAsync();
        await Assertions.Expect(Slot(page, 4, 0).Locator(".session")).ToHaveCountAsync(0);
        await dose.DragToAsync(Slot(page, 4, 0));
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Move it all the same" }).ClickAsync();
        await Assertions.Expect(Slot(page, 4, 0).Locator(".session")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".gives-way")).ToContainTextAsync("Heavy small dose");
        await window.AssertAccessibleAsync(".week-page");
        await page.GetByRole(AriaRole.Button, new() { Name = "Let them give way" }).ClickAsync();
        await Assertions.Expect(page.Locator(".gives-way")).ToHaveCountAsync(0);
        await Assertions.Expect(Slot(page, 4, 0).Locator(".session:not(.cancelled)")).ToHaveCountAsync(0);
        // Published from here; the message stays to be sent.
        await page.GetByRole(AriaRole.Button, new() { Name = "Publish version 3" }).ClickAsync();
        await Assertions.Expect(page.Locator(".to-send h2")).ToContainTextAsync("Published as version 3");
        await Assertions.Expect(page.Locator("#message-text")).ToContainTextAsync("Heavy small dose");
        Assert.Empty(window.Complaints);
    }

    /// <summary>Week 18 has a match on Saturday, as the demo's typical week has, and no sessions.</summary>
    [Fact]
    public async Task A_typical_week_is_laid_out_and_a_week_is_kept_as_one()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", 768, 1024, touch: true);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await page.GotoAsync(page.Url.TrimEnd('/') + "/18");
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy a week" }).TapAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".week-page");
        await page.GetByRole(AriaRole.Button, new() { Name = "One match, Saturday Competition" }).TapAsync();
        await Assertions.Expect(page.Locator(".session")).ToHaveCountAsync(7);
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("The week in figures");

        // Changed and kept under a name of its own: the next season of the team has it too.
        await PutAsync(page, 3, 0, "Prevention");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy a week" }).TapAsync();
        await page.FillAsync("#t-name", "Saturday, with prevention");
        await page.SelectOptionAsync("#t-phase", "");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Saturday, with prevention Any phase, match on Saturday, like this week" })).ToBeDisabledAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the typical week One match, Saturday" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "One match, Saturday" })).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo a team change" }).TapAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "One match, Saturday" })).ToHaveCountAsync(2);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).TapAsync();
        await Assertions.Expect(page.Locator(".session")).ToHaveCountAsync(7);
        Assert.Empty(window.Complaints);
    }

    /// <summary>A finger is asked as the mouse is: heavy legs the day before the match. What leaves the week says where it went, and what stands in another's way is told on its day.</summary>
    [Fact]
    public async Task A_press_that_a_rule_is_against_asks_first()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", 1024, 768, touch: true);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await PutAsync(page, 2, 0, "Lower-body strength");
        var legs = page.Locator(".session", new() { HasText = "Lower-body strength" });
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Lower-body strength");
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "A day later" }).TapAsync();
        await Assertions.Expect(page.Locator(".panel h2")).ToContainTextAsync("Lower-body strength");
        await Assertions.Expect(page.Locator(".panel")).ToContainTextAsync("Heavy legs before a match");
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Leave it" }).TapAsync();
        await Assertions.Expect(Slot(page, 2, 0).Locator(".session")).ToHaveCountAsync(1);

        // All the same: it is done, and the session says what is against its place.
        await legs.TapAsync();
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "A day later" }).TapAsync();
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Move it all the same" }).TapAsync();
        await Assertions.Expect(Slot(page, 3, 0).Locator(".session")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".panel .note")).ToContainTextAsync("Against this place");

        // Practice before the test, and two at one time.
        await Slot(page, 1, 2).Locator(".session").TapAsync();
        await page.Locator(".quick").GetByRole(AriaRole.Button, new() { Name = "To the morning" }).TapAsync();
        await Assertions.Expect(page.Locator(".day").Nth(1).Locator(".collides")).ToHaveTextAsync("Tires before the test: Practice");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).First.TapAsync();

        // Out of the week.
        await Slot(page, 0, 1).Locator(".session").TapAsync();
        await page.Locator(".panel summary").TapAsync();
        await page.FillAsync("#s-day", "2027-10-27");
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Save" }).TapAsync();
        await Assertions.Expect(page.Locator(".panel")).ToContainTextAsync("It lies on Wed 27 Oct now, in Week 17");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".week-page");
        Assert.Empty(window.Complaints);
    }

    /// <summary>The demo: one is out, one modified, one with another squad on Tuesdays and Thursdays; in week 18 two come back from their national teams.</summary>
    [Fact]
    public async Task Whose_week_is_otherwise_is_told_with_how_to_begin_after_days_elsewhere()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/week", 768, 1024, dark: true);
        var page = window.Page;
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator(".squad-week h2")).ToHaveTextAsync("3 players have another week");
        await Assertions.Expect(Slot(page, 1, 0).Locator(".session")).ToContainTextAsync("2 otherwise");
        await Slot(page, 1, 0).Locator(".session").ClickAsync();
        await Assertions.Expect(page.Locator(".panel")).ToContainTextAsync("Mira Stenlowe: 10:00 Test: Recovery instead, at most 40 min");

        await page.GotoAsync(page.Url.TrimEnd('/') + "/18");
        await page.Locator(".week-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy a week" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "One match, Saturday Competition" }).ClickAsync();
        await Assertions.Expect(page.Locator(".of-players li", new() { HasText = "Mira Stenlowe" })).ToContainTextAsync("ask the clinician again. Medical restrictions come first");
        var back = page.Locator(".squad-week li", new() { HasText = "Ylva Brennick" });
        await Assertions.Expect(back).ToContainTextAsync("Back on Mon 1 Nov (national team): 96 % (3465 AU) there in the last 7 days, the squad");
        await Assertions.Expect(page.Locator(".squad-week li", new() { HasText = "Ronja Pellworth" })).ToContainTextAsync("nobody has told what was done there");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".week-page");
        Assert.Empty(window.Complaints);
    }

    private static ILocator Slot(IPage page, int day, int slot) => page.Locator(".day").Nth(day).Locator(".slot").Nth(slot);

    private static async Task PutAsync(IPage page, int day, int slot, string kind)
    {
        await Slot(page, day, slot).Locator(".adds-here").ClickAsync();
        await page.Locator(".panel .kinds").GetByRole(AriaRole.Button, new() { Name = kind }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync(kind);
    }
}
