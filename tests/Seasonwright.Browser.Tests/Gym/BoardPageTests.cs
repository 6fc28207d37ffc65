using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>The demo's session of 28 October led from a tablet: 18 lift, on six racks of which two break.</summary>
public sealed class BoardPageTests(BrowserFixture browser)
{
    [Fact]
    public async Task A_session_is_led_by_taps_also_without_a_connection()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/gym", 1024, 768, touch: true);
        var page = window.Page;
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Board", Exact = true }).First.TapAsync();
        await page.Locator("#board[data-live]").WaitForAsync();

        // Who is here: one late, one modified by a tap, the others in one.
        await Who("Selma Hartvale", "Late").TapAsync();
        await Who("Dagny Westermoor", "Modified").TapAsync();
        await TapAsync("All others are here");
        await Assertions.Expect(page.Locator("#board-counts")).ToContainTextAsync("1 late");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await TapAsync("To the racks");

        // All at once is enough; then two bars break, who lifted there goes elsewhere, and 18 are too many for four racks.
        await TapAsync("Take it");
        await Rack("5").GetByRole(AriaRole.Button, new() { Name = "Broken rack 5" }).TapAsync();
        await Rack("6").GetByRole(AriaRole.Button, new() { Name = "Broken rack 6" }).TapAsync();
        await Assertions.Expect(page.Locator(".need").First).ToHaveTextAsync("Back squat: 18 athletes on 4 racks are 5 at the fullest, and 4 share one at most.");
        await Assertions.Expect(page.Locator(".row")).ToHaveCountAsync(18);
        await window.AssertAccessibleAsync();
        await TapAsync("Ways out");
        await page.Locator("dialog li", new() { HasText = "A/B split" }).GetByRole(AriaRole.Button).TapAsync();
        await Assertions.Expect(page.Locator(".need")).ToHaveCountAsync(0);
        await TapAsync("Start the clock");
        await Assertions.Expect(page.Locator("#board-turn")).ToContainTextAsync("Half A: A");
        await Assertions.Expect(page.GetByLabel("Elsewhere", new() { Exact = true }).Locator(".row")).ToHaveCountAsync(9);
        await window.AssertFitsAsync();
        await Assertions.Expect(page.Locator("#board[data-kept]")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept");

        // Cut off: it goes on, opens again, and nothing is lost.
        await page.Context.SetOfflineAsync(true);
        await Row("Thea").Locator(".as-written").TapAsync();
        await page.ReloadAsync();
        await page.Locator("#board[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator("#board-status")).ToContainTextAsync("1 taps wait on this tablet");
        // The first set left six: the rest is heavier by what a day can be, 5 %.
        var before = await WeightAsync("Saga");
        await Row("Saga").GetByRole(AriaRole.Button, new() { Name = "change this set" }).TapAsync();
        await page.Locator("[data-left='6']").TapAsync();
        await window.AssertAccessibleAsync("dialog");
        await page.Locator("[data-do='save']").TapAsync();
        await Assertions.Expect(Row("Saga").Locator(".as-written")).ToContainTextAsync("day up");
        Assert.InRange(await WeightAsync("Saga"), before * 1.02, before * 1.065);
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept", new() { Timeout = 15_000 });

        // Another exercise for all in two taps; who must not do it keeps their own.
        await Row("Karla").Locator(".exercise").TapAsync();
        await page.Locator("dialog tr", new() { HasText = "Front squat" }).GetByRole(AriaRole.Button, new() { Name = "All Front squat" }).TapAsync();
        await Assertions.Expect(Row("Karla").Locator(".exercise")).ToContainTextAsync("A Front squat");
        await TapAsync("Take back");
        await Assertions.Expect(Row("Karla").Locator(".exercise")).ToContainTextAsync("A Back squat");

        // Not done, another place, who comes late, and the rest as written.
        await Row("Karla").GetByRole(AriaRole.Button, new() { Name = "change this set" }).TapAsync();
        await page.Locator("[data-do='not-done']").TapAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Here now: Selma Hartvale" }).TapAsync();
        await Assertions.Expect(page.Locator("dialog")).ToContainTextAsync("minutes are left");
        await TapAsync("Leave nothing");
        await TapAsync("End");
        await page.Locator("[data-do='all-as-written']").TapAsync();
        await TapAsync("End");
        await Assertions.Expect(page.Locator(".sums-list li", new() { HasText = "not done" })).ToContainTextAsync("1");
        // Dagny is modified: what nobody told of her stays open.
        await Assertions.Expect(page.Locator(".sums-list li", new() { HasText = "open" })).Not.ToContainTextAsync("0 sets");
        await TapAsync("Close");
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept", new() { Timeout = 15_000 });

        // Another tablet sees the same.
        await using var second = await browser.OpenAsync(workspace, new Uri(page.Url).AbsolutePath, 390, 800, dark: true);
        await second.Page.Locator("#board[data-live]").WaitForAsync();
        await Assertions.Expect(second.Page.Locator(".row.is-done")).ToHaveCountAsync(17);
        await second.AssertFitsAsync();
        await second.AssertAccessibleAsync();
        Assert.Empty(second.Complaints);
        // While it was cut off, the browser itself says that it could not reach the workspace.
        Assert.DoesNotContain(window.Complaints, complaint => !complaint.StartsWith("Failed to load resource: net::ERR_", StringComparison.Ordinal));

        ILocator Who(string name, string how) => page.GetByRole(AriaRole.Button, new() { Name = $"{how} {name}" });

        ILocator Rack(string name) => page.GetByLabel($"Rack {name}", new() { Exact = true });

        ILocator Row(string name) => page.Locator(".row", new() { HasText = name });

        Task TapAsync(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).First.TapAsync();

        async Task<double> WeightAsync(string name) => double.Parse((await Row(name).Locator(".as-written b").InnerTextAsync()).Replace(" kg", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
    }
}
