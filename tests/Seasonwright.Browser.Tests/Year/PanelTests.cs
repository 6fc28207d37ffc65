using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Year;

/// <summary>The panel beside the chart, and the menus over it.</summary>
public sealed class PanelTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Fact]
    public async Task Of_several_weeks_only_the_field_that_was_changed_changes()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await EnterAsync(year, 21, "practices.count", "2");
        await EnterAsync(year, 22, "practices.count", "5");
        await year.Page.ClickAsync("#practices-w20");
        await year.Page.Keyboard.PressAsync("Shift+ArrowRight");
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Weeks 21 to 22");
        await Assertions.Expect(year.Page.Locator("#practices")).ToHaveValueAsync("");

        await EnterAsync(year, null, "practices.minutes", "70");
        Assert.Contains("2 practices of 70", await year.SaysAsync("practices-w20"), StringComparison.Ordinal);
        Assert.Contains("5 practices of 70", await year.SaysAsync("practices-w21"), StringComparison.Ordinal);

        // Two loads that differ are stepped each from its own.
        var (before, after) = (await LoadAsync(year, 20), await LoadAsync(year, 21));
        Assert.NotEqual(before, after);
        var number = await year.NumberAsync();
        await year.Page.ClickAsync(".panel form.load button:last-of-type");
        await year.AfterAsync(number);
        Assert.Equal((before + 5, after + 5), (await LoadAsync(year, 20), await LoadAsync(year, 21)));
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task The_run_under_the_cursor_is_the_one_renamed()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var first = await year.SaysAsync("phases-w1");
        await year.DragAsync("phases-w30", "phases-w30");
        await year.Page.Keyboard.PressAsync("Enter");
        var number = await year.NumberAsync();
        await year.Page.FillAsync("#choose-phases input[name='name']", "Second half");
        await year.Page.Keyboard.PressAsync("Enter");
        await year.AfterAsync(number);
        Assert.Contains("Second half", await year.SaysAsync("phases-w30"), StringComparison.Ordinal);
        Assert.Equal(first, await year.SaysAsync("phases-w1"));

        // Where there is no run there is nothing to rename.
        number = await year.NumberAsync();
        await year.Page.Keyboard.PressAsync("Delete");
        await year.AfterAsync(number);
        await year.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(year.Page.Locator("#choose-phases form")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Cells_go_to_a_spreadsheet_and_come_back_as_one_change()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        var page = year.Page;
        await page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await year.DragAsync("load-w30", "load-w30");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("Control+c");
        var before = await Task.WhenAll(LoadAsync(year, 30), LoadAsync(year, 31), LoadAsync(year, 32));
        Assert.Equal(string.Join('\t', before), await ClipboardAsync(page));

        var number = await year.NumberAsync();
        await SetClipboardAsync(page, "41%\t42%\t43%\n");
        await page.Keyboard.PressAsync("Control+v");
        await year.AfterAsync(number);
        int[] pasted = [41, 42, 43];
        Assert.Equal(pasted, await Task.WhenAll(LoadAsync(year, 30), LoadAsync(year, 31), LoadAsync(year, 32)));
        await SetClipboardAsync(page, "80\tmuch");
        await page.Keyboard.PressAsync("Control+v");
        await Assertions.Expect(page.Locator("#keeping-words")).ToContainTextAsync("Row 1, column 2 of the block: “much” does not fit Load");
        number = await year.NumberAsync();
        await page.Keyboard.PressAsync("Control+z");
        await year.AfterAsync(number);
        Assert.Equal(before, await Task.WhenAll(LoadAsync(year, 30), LoadAsync(year, 31), LoadAsync(year, 32)));

        // The weeks themselves are a block of every track that can be filled, under its first days.
        await year.DragAsync("weeks-w30", "weeks-w30");
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("Control+c");
        var block = (await ClipboardAsync(page)).Split('\n');
        Assert.Contains(block, line => line == $"Load\t{before[0]}");
        Assert.Contains(block, line => line.StartsWith("Practices\t", StringComparison.Ordinal));
        Assert.Empty(year.Window.Complaints);
    }

    private static Task<string> ClipboardAsync(IPage page) => page.EvaluateAsync<string>("() => navigator.clipboard.readText()");

    private static async Task SetClipboardAsync(IPage page, string text) => await page.EvaluateAsync("text => navigator.clipboard.writeText(text)", text);

    [Fact]
    public async Task A_menu_of_figures_begins_with_what_was_entered()
    {
        await using var year = await YearWindow.OpenAsync(browser, demo.Workspace);
        var load = await LoadAsync(year, 20);
        await year.Page.ClickAsync("#load-w20");
        await year.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(year.Page.Locator("#choose-load input")).ToHaveValueAsync($"{load}");
        await year.Page.Keyboard.PressAsync("Escape");
        await year.Page.ClickAsync("#practices-w20");
        await year.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(year.Page.Locator("#choose-practices input").First).Not.ToHaveValueAsync("");
    }

    [Fact]
    public async Task What_was_added_is_shown_and_not_added_twice()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.ClickAsync("#notes-w20");
        await year.Page.Keyboard.PressAsync("n");
        await year.Page.FillAsync("#n-text", "Half of the hall closed");
        var number = await year.NumberAsync();
        await year.Page.ClickAsync(".panel .main-act");
        await year.AfterAsync(number);
        await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync("Note");
        await Assertions.Expect(year.Page.Locator(".panel .main-act")).ToHaveTextAsync("Save");
        await Assertions.Expect(year.Page.Locator("#n-text")).ToHaveValueAsync("Half of the hall closed");

        // A form that stays for the next one is empty again.
        await year.Page.GetByRole(AriaRole.Button, new() { Name = "Tracks", Exact = true }).ClickAsync();
        await year.Page.FillAsync("#o-name", "Gym booked");
        number = await year.NumberAsync();
        await year.Page.ClickAsync(".panel .main-act");
        await year.AfterAsync(number);
        await Assertions.Expect(year.Page.Locator("#o-name")).ToHaveValueAsync("");
        await year.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(year.Page.Locator(".panel h2")).Not.ToHaveTextAsync("Tracks");
        Assert.Empty(year.Window.Complaints);
    }

    [Fact]
    public async Task On_a_full_disk_it_is_said_and_what_was_typed_is_kept_when_there_is_room_again()
    {
        await using var workspace = await WorkspaceProcess.StartAsync(demo: true);
        await using var year = await YearWindow.OpenAsync(browser, workspace);
        await year.Page.ClickAsync("#notes-w20");
        await year.Page.Keyboard.PressAsync("n");
        await year.Page.FillAsync("#n-text", "Half of the hall closed");
        var number = await year.NumberAsync();
        await workspace.FillDiskAsync(full: true);
        await year.Page.ClickAsync(".panel .main-act");
        await Assertions.Expect(year.Page.Locator("#keeping")).ToHaveAttributeAsync("data-state", "trouble");
        await Assertions.Expect(year.Page.Locator("#keeping-words")).ToContainTextAsync(workspace.Data);
        await Assertions.Expect(year.Page.Locator("#n-text")).ToHaveValueAsync("Half of the hall closed");
        Assert.Equal(number, await year.NumberAsync());

        await year.Page.ReloadAsync();
        await year.LiveAsync();
        await Assertions.Expect(year.Page.Locator("#keeping")).ToHaveAttributeAsync("data-state", "trouble");
        // The page tries again by itself.
        await workspace.FillDiskAsync(full: false);
        await year.AfterAsync(number);
        Assert.Equal(number + 1, await year.NumberAsync());
        Assert.Contains("Half of the hall closed", await year.SaysAsync("notes-w20"), StringComparison.Ordinal);
    }

    /// <summary>Types into the practices of a week, or of the weeks that are chosen already.</summary>
    private static async Task EnterAsync(YearWindow year, int? week, string field, string value)
    {
        if (week is { } one)
        {
            await year.Page.ClickAsync($"#practices-w{one - 1}");
            await Assertions.Expect(year.Page.Locator(".panel h2")).ToHaveTextAsync($"Week {one}");
        }
        var number = await year.NumberAsync();
        await year.Page.FillAsync($".panel [name='{field}']", value);
        await year.Page.Keyboard.PressAsync("Tab");
        await year.AfterAsync(number);
    }

    private static async Task<int> LoadAsync(YearWindow year, int week)
    {
        var says = (await year.SaysAsync($"load-w{week}")).Split(' ');
        return int.Parse(says[Array.IndexOf(says, "per") - 1], System.Globalization.CultureInfo.InvariantCulture);
    }
}
