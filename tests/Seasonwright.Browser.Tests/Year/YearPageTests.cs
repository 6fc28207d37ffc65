using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Year;

public sealed class YearPageTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Fact]
    public async Task Weeks_are_painted_by_pointer_and_undone_by_key()
    {
        await using var workspace = await WorkspaceProcess.StartAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var before = await year.SaysAsync("phases-w31");
        var number = await year.NumberAsync();

        await year.DragAsync("phases-w30", "phases-w32");
        await year.Page.ClickAsync("#choose-phases button[data-key='5']");
        await year.AfterAsync(number);
        Assert.Contains("eak", await year.SaysAsync("phases-w31"), StringComparison.Ordinal);
        Assert.DoesNotContain("eak", before, StringComparison.Ordinal);

        number = await year.NumberAsync();
        await year.Page.Keyboard.PressAsync("Control+z");
        await year.AfterAsync(number);
        Assert.Equal(before, await year.SaysAsync("phases-w31"));
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task Everything_on_the_chart_can_be_done_without_a_mouse()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var keys = year.Page.Keyboard;
        await year.Page.FocusAsync("svg.drawing");
        async Task To(string track)
        {
            for (var i = 0; i < 60 && await year.Page.GetAttributeAsync("svg.drawing", "aria-activedescendant") is var at && !at!.StartsWith(track, StringComparison.Ordinal); i++)
                await keys.PressAsync("ArrowDown");
            Assert.StartsWith(track, await year.Page.GetAttributeAsync("svg.drawing", "aria-activedescendant"), StringComparison.Ordinal);
        }

        // A block over three weeks, by its number.
        await To("blocks-");
        var number = await year.NumberAsync();
        await keys.PressAsync("Shift+ArrowRight");
        await keys.PressAsync("Shift+ArrowRight");
        await keys.PressAsync("3");
        await year.AfterAsync(number);

        // A load typed, then stepped up.
        await To("load-");
        number = await year.NumberAsync();
        await keys.PressAsync("6");
        await keys.TypeAsync("0");
        await keys.PressAsync("Enter");
        await year.AfterAsync(number);
        Assert.Contains("60 per cent", await year.SaysAsync((await year.Page.GetAttributeAsync("svg.drawing", "aria-activedescendant"))!), StringComparison.Ordinal);
        number = await year.NumberAsync();
        await keys.PressAsync("+");
        await year.AfterAsync(number);
        Assert.Contains("65 per cent", await year.SaysAsync((await year.Page.GetAttributeAsync("svg.drawing", "aria-activedescendant"))!), StringComparison.Ordinal);

        // Emphasis, and the list of keys.
        await To("emphasis-power");
        number = await year.NumberAsync();
        await keys.PressAsync("1");
        await year.AfterAsync(number);
        await keys.PressAsync("?");
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Keys");
    }

    [Fact]
    public async Task A_load_is_dragged_and_a_match_moved_to_another_day()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var number = await year.NumberAsync();
        await year.DragAsync("load-w20", "load-w20", 0.8, 0.3);
        await year.AfterAsync(number);
        var load = await year.SaysAsync("load-w20");

        number = await year.NumberAsync();
        // Harbour Vale's match in week 18 goes from Saturday 6 to Sunday 7 November.
        Assert.Contains("Saturday 6 November", await year.SaysAsync("dates-d2027-11-06"), StringComparison.Ordinal);
        var match = year.Page.Locator("[data-track=matches] [data-item][aria-label*='Moarvik']").First;
        var box = (await match.BoundingBoxAsync())!;
        await year.Page.Mouse.MoveAsync((float)(box.X + box.Width / 2), (float)(box.Y + 6));
        await year.Page.Mouse.DownAsync();
        var target = (await year.Page.Locator("#dates-d2027-11-07").BoundingBoxAsync())!;
        await year.Page.Mouse.MoveAsync((float)(target.X + target.Width / 2), (float)(target.Y + target.Height / 2), new MouseMoveOptions { Steps = 5 });
        await year.Page.Mouse.UpAsync();
        await year.AfterAsync(number);
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToContainTextAsync("Sun 7 Nov");
        Assert.Equal(load, await year.SaysAsync("load-w20"));
    }

    [Fact]
    public async Task An_edit_leaves_the_drawing_of_other_months_in_place()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.EvaluateAsync("() => { window.drawn = [...document.querySelectorAll('svg.drawing .cell')]; }");
        var number = await year.NumberAsync();
        await year.DragAsync("load-w20", "load-w20", 0.8, 0.3);
        await year.AfterAsync(number);
        var renewed = await year.Page.EvaluateAsync<int[]>("() => window.drawn.filter(cell => !cell.isConnected).map(cell => Number(cell.dataset.week))");
        Assert.Contains(20, renewed);
        Assert.DoesNotContain(renewed, week => week is < 8 or > 32);
    }

    [Fact]
    public async Task A_level_drawn_in_one_of_several_chosen_weeks_is_for_all_of_them()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.ClickAsync("#load-w18");
        await year.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await year.Page.Keyboard.PressAsync("Shift+ArrowRight");
        var outside = await year.SaysAsync("load-w21");
        var number = await year.NumberAsync();
        await year.DragAsync("load-w19", "load-w19", 0.9, 0.3);
        await year.AfterAsync(number);
        static string Level(string says) => says.Split(": ")[1].Split(',')[0];
        var levels = new[] { "load-w18", "load-w19", "load-w20" }.Select(cell => year.SaysAsync(cell).Result).Select(Level).ToList();
        Assert.Single(levels.Distinct(StringComparer.Ordinal));
        Assert.Equal(outside, await year.SaysAsync("load-w21"));
    }

    [Fact]
    public async Task On_a_fresh_page_the_panel_changes_the_week_it_names()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Week 16");
        var (first, before) = (await year.SaysAsync("load-w0"), await year.NumberAsync());
        await year.Page.FillAsync("#load", "61");
        await year.Page.Keyboard.PressAsync("Tab");
        await year.AfterAsync(before);
        Assert.Contains("61 per cent", await year.SaysAsync("load-w15"), StringComparison.Ordinal);
        Assert.Equal(first, await year.SaysAsync("load-w0"));
        await year.Page.ClickAsync("[data-make=event]");
        await Assertions.Expect(year.Page.Locator("#e-first")).ToHaveValueAsync("2027-10-18");
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task In_week_zoom_an_end_in_sight_leaves_what_is_out_of_sight()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var (far, number) = (await year.SaysAsync("phases-w9"), await year.NumberAsync());
        await year.Page.GetByRole(AriaRole.Group, new() { Name = "Zoom" }).GetByText("Weeks", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(year.Page.Locator("#phases-w9")).ToHaveCountAsync(0);
        var run = (await year.Page.Locator("[data-track=phases] [data-item]").First.BoundingBoxAsync())!;
        var target = (await year.Page.Locator("#phases-w21").BoundingBoxAsync())!;
        await year.Page.Mouse.MoveAsync(run.X + run.Width - 3, run.Y + run.Height / 2);
        await year.Page.Mouse.DownAsync();
        await year.Page.Mouse.MoveAsync(target.X + target.Width / 2, target.Y + target.Height / 2, new MouseMoveOptions { Steps = 5 });
        await year.Page.Mouse.UpAsync();
        await year.AfterAsync(number);
        await year.Page.GetByRole(AriaRole.Group, new() { Name = "Zoom" }).GetByText("Whole season", new() { Exact = true }).ClickAsync();
        await year.Page.WaitForSelectorAsync("#phases-w9");
        Assert.Equal(far, await year.SaysAsync("phases-w9"));
    }

    [Fact]
    public async Task A_change_of_the_team_is_kept_and_taken_back_on_its_own()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.Locator("header").GetByRole(AriaRole.Button, new() { Name = "Team", Exact = true }).ClickAsync();
        for (var minutes = 51; minutes <= 53; minutes++)
        {
            await year.Page.FillAsync("#l-min", $"{minutes}");
            await year.Page.Locator("form:has(#l-min) button").ClickAsync();
            await Assertions.Expect(year.Page.Locator("form[data-edit*='\"minutes\":" + minutes + "']")).ToHaveCountAsync(1);
            await year.Page.ReloadAsync();
            await year.LiveAsync();
            await year.Page.Locator("header").GetByRole(AriaRole.Button, new() { Name = "Team", Exact = true }).ClickAsync();
        }
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "Undo a team change" }).ClickAsync();
        await Assertions.Expect(year.Page.Locator("#l-min")).ToHaveValueAsync("52");
        await year.Page.Locator("header").GetByRole(AriaRole.Button, new() { Name = "History", Exact = true }).ClickAsync();
        await Assertions.Expect(year.Page.Locator(".history li").First).ToContainTextAsync("Team: ");
        await Assertions.Expect(year.Page.Locator(".history .taken-back").First).ToContainTextAsync("Team: ");
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task A_match_won_settles_those_that_wait_for_it_in_one_step_and_says_so()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var next = year.Page.Locator("[data-track=matches] [data-item][aria-label*='Cup, Quarter-final']");
        Assert.Contains("conditional", (await next.GetAttributeAsync("aria-label"))!, StringComparison.Ordinal);
        var cup = (await year.Page.Locator("[data-track=matches] [data-item][aria-label*='Cup, Second round']").BoundingBoxAsync())!;
        await year.Page.Mouse.ClickAsync(cup.X + cup.Width / 2, cup.Y + 5);
        var before = await year.NumberAsync();
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "We won" }).ClickAsync();
        await year.AfterAsync(before);
        await Assertions.Expect(year.Page.Locator(".settle p").First).ToContainTextAsync("We won. Settled with it");
        await Assertions.Expect(year.Page.Locator(".settle .acts a", new() { HasText = "Replan" })).ToBeVisibleAsync();
        Assert.DoesNotContain("conditional", (await next.GetAttributeAsync("aria-label"))!, StringComparison.Ordinal);
        Assert.Equal(before + 1, await year.NumberAsync());
        await year.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(year.Page.Locator(".settle p").First).ToContainTextAsync("Waits for this match");
        Assert.Contains("conditional", (await next.GetAttributeAsync("aria-label"))!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_phase_grows_and_shrinks_by_its_end()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        // Competition II ends with week 39; the peak begins in week 40. The first weeks of the demo are locked.
        var (last, next) = (await year.SaysAsync("phases-w38"), await year.SaysAsync("phases-w39"));
        async Task EndAtAsync(string cell)
        {
            var number = await year.NumberAsync();
            var run = (await year.Page.Locator("[data-track=phases] [data-item^='phase/']").Nth(6).BoundingBoxAsync())!;
            await year.Page.Mouse.MoveAsync(run.X + run.Width - 3, run.Y + run.Height / 2);
            await year.Page.Mouse.DownAsync();
            var to = (await year.Page.Locator("#" + cell).BoundingBoxAsync())!;
            await year.Page.Mouse.MoveAsync(to.X + to.Width / 2, to.Y + to.Height / 2, new MouseMoveOptions { Steps = 5 });
            await year.Page.Mouse.UpAsync();
            await year.AfterAsync(number);
        }

        await EndAtAsync("phases-w39");
        Assert.Contains("Competition II", await year.SaysAsync("phases-w39"), StringComparison.Ordinal);
        Assert.DoesNotContain("Competition II", next, StringComparison.Ordinal);
        await EndAtAsync("phases-w37");
        Assert.DoesNotContain("Competition II", await year.SaysAsync("phases-w38"), StringComparison.Ordinal);
        Assert.Contains("Competition II", last, StringComparison.Ordinal);
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task Two_windows_agree_and_the_slower_hand_is_told_who_changed_what()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var one = await YearWindow.OpenAsync(browser, workspace);
        await using var two = await YearWindow.OpenAsync(browser, workspace);
        var number = await one.NumberAsync();

        // The second window sends its stroke as it saw the season; the first has been faster.
        await two.Page.RouteAsync("**/gestures", async route =>
        {
            await one.DragAsync("load-w20", "load-w20", 0.8, 0.2);
            await one.AfterAsync(number);
            await route.ContinueAsync();
        });
        await two.DragAsync("load-w20", "load-w20", 0.8, 0.6);
        await Assertions.Expect(two.Page.Locator("#keeping[data-state=refused] #keeping-words")).ToContainTextAsync("changed this meanwhile");
        await two.AfterAsync(number);
        Assert.Equal(await one.SaysAsync("load-w20"), await two.SaysAsync("load-w20"));
    }

    [Fact]
    public async Task A_gesture_made_while_the_workspace_is_down_is_kept_once_after_a_reload()
    {
        await using var first = await WorkspaceProcess.StartAsync(demo: true);
        var port = first.Address.Port;
        await using var year = await YearWindow.OpenAsync(browser, first);
        var number = await year.NumberAsync();
        await first.KillAsync();
        await year.DragAsync("load-w20", "load-w20", 0.8, 0.3);
        await Assertions.Expect(year.Page.Locator("#keeping")).ToHaveAttributeAsync("data-state", "waiting");

        await using var second = await WorkspaceProcess.StartAsync(data: first.Data, port: port);
        // The page comes back by itself or by the person's own reload, whichever is first.
        await year.Page.WaitForFunctionAsync("n => Number(document.querySelector('.year')?.dataset.number) === n + 1 && document.querySelector('.year').dataset.live", number, new() { Timeout = 60_000 });
        await year.Page.ReloadAsync();
        await year.LiveAsync();
        Assert.Equal(number + 1, await year.NumberAsync());
        Assert.Null(await year.Page.EvaluateAsync<string?>("() => Object.keys(sessionStorage).find(key => key.startsWith('seasonwright.pending')) ?? null"));
    }

    [Fact]
    public async Task What_is_typed_in_a_panel_outlives_a_reload()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "Publish", Exact = true }).ClickAsync();
        await year.Page.FillAsync("#p-name", "Second half");
        await year.Page.ReloadAsync();
        await year.LiveAsync();
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "Publish", Exact = true }).ClickAsync();
        await Assertions.Expect(year.Page.Locator("#p-name")).ToHaveValueAsync("Second half");
        var number = await year.NumberAsync();
        await year.Page.ClickAsync(".panel .main-act");
        await year.AfterAsync(number);
        await Assertions.Expect(year.Page.Locator(".season-name")).ToContainTextAsync("Second half");
    }

    [Fact]
    public async Task What_was_set_can_be_taken_away_again()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        async Task ClearAsync(string cell)
        {
            await year.Page.ClickAsync("#" + cell);
            var number = await year.NumberAsync();
            await year.Page.Keyboard.PressAsync("Delete");
            await year.AfterAsync(number);
        }

        Assert.Contains("per cent", await year.SaysAsync("load-w20"), StringComparison.Ordinal);
        await ClearAsync("load-w20");
        Assert.DoesNotContain(": 56 per cent", await year.SaysAsync("load-w20"), StringComparison.Ordinal);
        await ClearAsync("practices-w20");
        await ClearAsync("weeks-w20");

        // The same in the panel: a practice count emptied, a member of staff taken off.
        var kept = await year.NumberAsync();
        await year.Page.ClickAsync("#practices-w21");
        await year.Page.FillAsync("#practices", "");
        foreach (var field in new[] { "practices.minutes", "practices.rpe" }) await year.Page.FillAsync($".panel [name='{field}']", "");
        await year.Page.Keyboard.PressAsync("Tab");
        await year.AfterAsync(kept);
        kept = await year.NumberAsync();
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "Season", Exact = true }).ClickAsync();
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Season");
        await year.Page.Locator(".panel .things li button").First.ClickAsync();
        await year.AfterAsync(kept);
        Assert.Empty(year.Window.Complaints);
    }

    [Theory]
    [InlineData(1440, false, "Weeks")]
    [InlineData(1440, true, "Weeks")]
    [InlineData(1024, false, "Days")]
    [InlineData(768, true, "Whole season")]
    public async Task The_page_fits_and_can_be_read_by_everyone(int width, bool dark, string zoom)
    {
        await using var year = await YearWindow.OpenAsync(browser, demo.Workspace, width, dark, touch: width < 1000);
        await year.Page.GetByRole(AriaRole.Button, new() { Name = zoom, Exact = true }).First.ClickAsync();
        await year.Window.AssertFitsAsync();
        // The drawing of a year has thousands of words, and looking at each takes half a minute: a part of it, once in each theme, is enough. Its looks are the same at every width.
        if (zoom == "Weeks") await year.Window.AssertAccessibleAsync();
        else await year.Window.AssertAccessibleAsync("header", ".year > :not(.board)", ".views", ".panel");
        Assert.Empty(year.Window.Complaints);
    }
}
