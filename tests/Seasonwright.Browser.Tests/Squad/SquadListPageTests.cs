using Microsoft.Playwright;
using Seasonwright.Browser.Tests.Lists;

namespace Seasonwright.Browser.Tests.Squad;

/// <summary>The page that reads a squad list and keeps it. The lists are the invented samples under tests/Cases/workbooks, and lines of our own.</summary>
public sealed class SquadListPageTests(BrowserFixture browser)
{
    private static readonly string Samples = Path.Combine(WorkspaceProcess.Root, "tests", "Cases", "workbooks", "samples");

    /// <summary>People as the samples' expected results count them, and words that stand in their cells on health.</summary>
    [Theory]
    [InlineData("squad-01-two-name-columns.csv", 11, 1440, false, "verletzt;Kreuzband;OP 12")]
    [InlineData("squad-02-one-name-column.xlsx", 8, 768, true, "")]
    [InlineData("squad-03-pasted-list.txt", 8, 360, false, "asthma;inhaler;collar")]
    public async Task A_list_is_shown_kept_and_erased_and_says_nothing_of_health(string file, int people, int width, bool dark, string health)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await OpenAsync(workspace, width, dark);
        var page = window.Page;
        await page.SetInputFilesAsync("#f-file", Path.Combine(Samples, file));
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToHaveCountAsync(people);
        await Assertions.Expect(page.Locator(".held")).ToBeVisibleAsync();
        foreach (var summary in await page.Locator("summary").AllAsync()) await summary.ClickAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        var shown = await page.Locator("main").InnerTextAsync();
        foreach (var word in health.Split(';', StringSplitOptions.RemoveEmptyEntries)) Assert.DoesNotContain(word, shown, StringComparison.OrdinalIgnoreCase);

        await page.ClickAsync("button[value=take]");
        await page.Locator(".kept-squad").WaitForAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator(".kept-squad")).ToContainTextAsync("are kept");
        await window.AssertAccessibleAsync();
        await page.ClickAsync("text=Erase the kept list");
        await Assertions.Expect(page.Locator(".kept-squad")).ToHaveCountAsync(0);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_pasted_list_takes_the_place_of_a_file_and_what_is_no_list_is_told()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await OpenAsync(workspace, 1440, false);
        var page = window.Page;
        await page.SetInputFilesAsync("#f-file", new FilePayload { Name = "plan.txt", MimeType = "text/plain", Buffer = "the quick brown fox"u8.ToArray() });
        await Assertions.Expect(page.Locator(".problems")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await page.SetInputFilesAsync("#f-file", Path.Combine(Samples, "squad-02-one-name-column.xlsx"));
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToHaveCountAsync(8);
        await page.FillAsync("#f-text", "No;Name;Position;Squat 1RM (kg)\n7;Halvorsen, Runa;left back;100\n9;Storm, Ida;pivot;\n1;Dal, Mina;goalkeeper;82,5\n");
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator(".rows tbody tr").Last).ToContainTextAsync("back squat 82.5 kg");
        await page.ClickAsync("button[value=take]");
        await Assertions.Expect(page.Locator(".kept-squad")).ToContainTextAsync("Runa Halvorsen, Ida Storm, Mina Dal");

        // A second list does not take the first one's place by itself.
        await page.FillAsync("#f-text", "No;Name;Position\n3;Fjeld, Sanna;pivot\n5;Lund, Tuva;left back\n");
        await Assertions.Expect(page.Locator(".replaces")).ToContainTextAsync("its 3 people go, 2 come");
        await window.AssertAccessibleAsync();
        await page.ClickAsync("button[value=take]");
        await Assertions.Expect(page.Locator(".refused").Filter(new() { HasText = "A list with 3 people is kept already" })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".kept-squad")).ToContainTextAsync("Runa Halvorsen, Ida Storm, Mina Dal");
        await page.CheckAsync("input[name=replace]");
        await page.ClickAsync("button[value=take]");
        await Assertions.Expect(page.Locator(".kept-squad")).ToContainTextAsync("Sanna Fjeld, Tuva Lund");
    }

    [Fact]
    public async Task What_was_filled_in_before_the_script_was_there_is_read_when_it_is()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await OpenAsync(workspace, 1440, false);
        var page = window.Page;
        var come = new TaskCompletionSource();
        await page.RouteAsync("**/seasons*.js", async route =>
        {
            await come.Task;
            await route.ContinueAsync();
        });
        await page.GotoAsync(page.Url, new() { WaitUntil = WaitUntilState.Commit });
        await page.FillAsync("#f-text", "No;Name;Position\n7;Halvorsen, Runa;left back\n9;Storm, Ida;pivot\n");
        await Assertions.Expect(page.Locator(".rows")).ToHaveCountAsync(0);
        come.SetResult();
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task A_list_of_another_kind_is_told_where_it_belongs()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await OpenAsync(workspace, 1440, false);
        var page = window.Page;
        await page.SetInputFilesAsync("#f-file", Path.Combine(Samples, "workbook-01-weeks-across.xlsx"));
        await Assertions.Expect(page.Locator(".problems")).ToContainTextAsync("Bring my sheet");
        await page.GotoAsync(page.Url.Replace("/squad-list", "/fixtures", StringComparison.Ordinal));
        await page.SetInputFilesAsync("#f-file", Path.Combine(Samples, "squad-02-one-name-column.xlsx"));
        await Assertions.Expect(page.Locator(".problems")).ToContainTextAsync("Bring a squad list");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("low back");
    }

    private async Task<BrowserWindow> OpenAsync(RunningWorkspace workspace, int width, bool dark)
    {
        var window = await browser.OpenAsync(workspace, "/seasons/new", width, dark: dark);
        await ListWindow.StartSeasonAsync(window.Page, "2026-08-03");
        await window.Page.GotoAsync(window.Page.Url.Replace("/fixtures?new=true", "/squad-list", StringComparison.Ordinal));
        return window;
    }
}
