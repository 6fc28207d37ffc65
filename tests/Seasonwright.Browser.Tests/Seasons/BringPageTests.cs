using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Seasons;

/// <summary>The page that makes a season of a coach's own year workbook. The workbooks are the invented samples under tests/Cases/workbooks.</summary>
public sealed class BringPageTests(BrowserFixture browser)
{
    private static readonly string Samples = Path.Combine(WorkspaceProcess.Root, "tests", "Cases", "workbooks", "samples");

    [Fact]
    public async Task A_workbook_is_asked_about_changed_and_becomes_a_season_in_one_step()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace);
        var page = window.Page;
        await page.ClickAsync("text=Bring my sheet");
        await ChooseAsync(page, "workbook-01-weeks-across.xlsx");
        await Assertions.Expect(Becomes(page, "Phase")).ToHaveTextAsync("8 phases");
        await Assertions.Expect(Becomes(page, "Load %")).ToHaveTextAsync("load of 43 weeks");
        await Assertions.Expect(page.Locator("tr", new() { HasText = "L13" })).ToContainTextAsync("Mon 7 Sep – Sun 13 Sep 2026");

        // An answer, a row left, and one taken in that nobody asked for.
        await page.Locator(".question", new() { HasText = "have no day" }).GetByText("Saturday").ClickAsync();
        await Assertions.Expect(page.Locator("tr", new() { HasText = "L13" })).ToContainTextAsync("Sat 12 Sep 2026");
        await Row(page, "Video").Locator("select").SelectOptionAsync("not taken in");
        await Assertions.Expect(Becomes(page, "Video")).ToBeEmptyAsync();
        await page.ClickAsync("summary:has-text('left out')");
        await page.Locator("li", new() { HasText = "Load (old)" }).GetByText("Take it in all the same").ClickAsync();
        await Assertions.Expect(Becomes(page, "Load (old)")).ToHaveTextAsync("a track of your own");

        await TakeAsync(page);
        await Assertions.Expect(page.Locator("[data-track=phases] [data-item]")).ToHaveCountAsync(8);
        await Assertions.Expect(page.Locator("body")).ToContainTextAsync("HARBOUR VALE");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Pool");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("Video");

        // One undo takes the whole workbook back; the weeks stay.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-track=phases] [data-item]")).ToHaveCountAsync(0);
        Assert.Empty(window.Complaints);
    }

    [Theory]
    [InlineData(360, true)]
    [InlineData(1440, true)]
    public async Task It_fits_can_be_read_by_everyone_and_shows_nothing_of_health(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/bring", width, dark: dark);
        var page = window.Page;
        await window.AssertAccessibleAsync();
        await ChooseAsync(page, "workbook-02-weeks-down.xlsx");
        foreach (var summary in await page.Locator("summary").AllAsync()) await summary.ClickAsync();
        await Assertions.Expect(page.Locator(".held")).ToContainTextAsync("H12");
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();
        // What the cell and its note say, by the sample's own file.
        var shown = await page.Locator("main").InnerTextAsync();
        foreach (var word in new[] { "physio", "surgery", "shoulder", "Do not tell" }) Assert.DoesNotContain(word, shown, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task What_is_no_workbook_is_told_and_another_file_starts_anew()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/bring");
        var page = window.Page;
        await page.SetInputFilesAsync("#f-file", new FilePayload { Name = "plan.xlsx", MimeType = "text/plain", Buffer = "Week;Load\n1;60"u8.ToArray() });
        await Assertions.Expect(page.Locator(".problems")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await ChooseAsync(page, "squad-02-one-name-column.xlsx");
        await Assertions.Expect(page.Locator("#drawn")).ToContainTextAsync("This is a squad list");
        await ChooseAsync(page, "workbook-04-colours-only.xlsx");
        await page.Locator(".question", new() { HasText = "have no day" }).GetByText("Sunday").ClickAsync();
        await Assertions.Expect(page.Locator("tr", new() { HasText = "U15 plan E6" })).ToContainTextAsync("Sun 13 Sep 2026");
        // A legend below the plan is no row of it.
        await Assertions.Expect(page.Locator(".brings tbody tr")).ToHaveCountAsync(5);
        await ChooseAsync(page, "workbook-02-weeks-down.xlsx");
        await Assertions.Expect(page.Locator(".question", new() { HasText = "have no day" })).ToHaveClassAsync("question open");
        await page.FillAsync("#f-team-name", "");
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/season/**");
        await Assertions.Expect(page.Locator("body")).ToContainTextAsync("ST BRANNOC'S SCHOOL");
    }

    private static async Task ChooseAsync(IPage page, string sample)
    {
        await page.SetInputFilesAsync("#f-file", Path.Combine(Samples, sample));
        await Assertions.Expect(page.Locator(".brought")).ToContainTextAsync(sample);
    }

    private static ILocator Row(IPage page, string label) => page.Locator(".brings tbody tr", new() { Has = page.GetByText(label, new() { Exact = true }) });

    private static ILocator Becomes(IPage page, string label) => Row(page, label).Locator("td").Nth(2);

    private static async Task TakeAsync(IPage page)
    {
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/season/**");
        await page.WaitForSelectorAsync(".year[data-live]");
    }
}
