using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Lists;

/// <summary>The page that takes a fixture list in, as a coach uses it. The lists are the invented samples under tests/Cases/fixtures.</summary>
public sealed class FixturesPageTests(BrowserFixture browser)
{
    private static readonly string Cases = Path.Combine(WorkspaceProcess.Root, "tests", "Cases", "fixtures", "samples");

    [Fact]
    public async Task A_new_season_asks_three_questions_and_ends_on_the_year_with_the_matches_in_it()
    {
        await using var workspace = await WorkspaceProcess.StartAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", await TextAsync("fixtures-01-league-ids.csv"));
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 10 matches");
        await Assertions.Expect(page.Locator("#drawn svg.drawing")).ToBeVisibleAsync();
        await window.AssertAccessibleAsync();
        // Two spellings of one club are asked; the answer is one tap and stays where it was.
        await page.GetByText("one club: show").ClickAsync();
        await Assertions.Expect(page.Locator(".question.open")).ToHaveCountAsync(0);
        await page.DblClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/breaks?new=true");
        await page.ClickAsync("a.quiet");
        await Assertions.Expect(page.Locator("svg.drawing [data-item^=match]")).ToHaveCountAsync(10);
        Assert.Empty(window.Complaints);
    }

    [Theory]
    [InlineData("fixtures-14-list.xlsx", "Take in 6 matches", 6)]
    [InlineData("fixtures-09-calendar.ics", "Take in 8 matches", 8)]
    public async Task A_workbook_and_a_calendar_are_brought_like_any_list(string file, string take, int matches)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, file));
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync(take);
        // What a file tells of health stands neither in the box nor in the browser's store.
        await Assertions.Expect(page.Locator("#f-text")).ToHaveValueAsync("");
        Assert.DoesNotContain("Harbour Vale", await page.EvaluateAsync<string>("() => JSON.stringify(sessionStorage)"), StringComparison.Ordinal);
        await window.AssertAccessibleAsync();
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/breaks?new=true");
        await page.ClickAsync("a.quiet");
        await Assertions.Expect(page.Locator("svg.drawing")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("svg.drawing [data-item^=match]")).ToHaveCountAsync(matches);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_calendar_that_names_another_club_is_asked_about_nobody_is_suggested_and_the_answer_stays_in_sight()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await page.FillAsync("#f-name", "Northmere");
        await page.FillAsync("#f-first", "2026-08-03");
        await page.PressAsync("#f-first", "Tab");
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/fixtures?new=true");
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, "fixtures-09-calendar.ics"));
        var whose = page.Locator(".question", new() { HasText = "Whose matches" });
        await Assertions.Expect(whose).ToHaveClassAsync("question open");
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await whose.GetByLabel("Harbour Vale", new() { Exact = true }).CheckAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 8 matches");
        await Assertions.Expect(whose.GetByLabel("Harbour Vale", new() { Exact = true })).ToBeCheckedAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_later_state_of_the_list_shows_what_changed_and_a_third_reading_nothing()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        var address = page.Url.Split('?')[0];
        await TakeAsync(page, address, "fixtures-01-league-ids.csv");
        await page.GotoAsync(address);
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, "fixtures-08-update-of-01.csv"));
        await Assertions.Expect(page.Locator("tr.moved")).ToContainTextAsync("Tarnholt Damer");
        await Assertions.Expect(page.Locator("tr.vanished")).ToContainTextAsync("Brovik");
        await Assertions.Expect(page.Locator("tr.added")).ToHaveCountAsync(1);
        await ListWindow.TakeAsync(page);
        await page.GotoAsync(address);
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, "fixtures-08-update-of-01.csv"));
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Nothing new to take in");
    }

    [Fact]
    public async Task The_order_of_day_and_month_is_never_taken_for_granted()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", await TextAsync("fixtures-05-which-way-round.csv"));
        await Assertions.Expect(page.Locator(".question legend")).ToContainTextAsync("Day first or month first?");
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await page.GetByLabel("month first").CheckAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeEnabledAsync();
        await Assertions.Expect(page.Locator(".rows tbody tr").First).ToContainTextAsync("Sun 11 Oct 2026");
    }

    [Fact]
    public async Task A_list_that_names_another_club_is_asked_about_and_a_no_can_be_taken_back()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", "Kalnes HK fixtures\nDate,Time,Opponent\n2026-09-05,11:00,Brovik\n2026-09-05,18:00,Turnes\n");
        await Assertions.Expect(page.Locator(".question legend")).ToContainTextAsync("Is it yours?");
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await page.GetByLabel("no, it is another team's").CheckAsync();
        await Assertions.Expect(page.Locator(".problems li")).ToContainTextAsync("another team's");
        await page.GetByLabel("yes, it is ours").CheckAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 2 matches");
        await Assertions.Expect(page.Locator("#drawn")).ToContainTextAsync("More than one match on Sat 5 Sep 2026: Brovik 11:00, Turnes 18:00.");
        await window.AssertAccessibleAsync();
    }

    [Theory]
    [InlineData("Date,Home,Away\n", "No match was found in it.")]
    [InlineData("{ \"matches\": [ { \"date\": ", "no valid JSON")]
    [InlineData("Date,Home,Away\n2027-09-04,\"Harbour Vale,Brovik\n", "A quotation mark is opened in this row")]
    [InlineData("dear coach,\nsee you on Monday\n", "No match was found in it.")]
    public async Task What_cannot_be_read_is_told_changes_nothing_and_stays_in_the_box(string typed, string told)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", typed);
        await Assertions.Expect(page.Locator(".problems li").First).ToContainTextAsync(told);
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeDisabledAsync();
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#f-text")).ToHaveValueAsync(typed);
        await window.AssertAccessibleAsync();
    }

    [Fact]
    public async Task A_heading_that_is_not_known_is_mapped_by_hand()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", "Date,Time,Opponent,Bracket\n2026-09-12,18:00,Brovik,Northern Shield\n2026-09-19,19:30,Kalnes,Northern Shield\n");
        await page.ClickAsync("text=How it was read");
        await page.GetByLabel("Bracket").FocusAsync();
        await page.GetByLabel("Bracket").SelectOptionAsync("Competition");
        await Assertions.Expect(page.Locator(".rows tbody tr").First).ToContainTextAsync("Northern Shield");
        await Assertions.Expect(page.GetByLabel("Bracket")).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 2 matches");
    }

    [Fact]
    public async Task When_the_workspace_does_not_answer_the_list_stays_and_goes_in_later_once()
    {
        await using var workspace = await WorkspaceProcess.StartAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", await TextAsync("fixtures-01-league-ids.csv"));
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeEnabledAsync();
        await page.RouteAsync("**/fixtures*", route => route.AbortAsync());
        await page.ClickAsync("button[value=take]");
        await Assertions.Expect(page.Locator(".trouble")).ToBeVisibleAsync();
        await page.UnrouteAsync("**/fixtures*");
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/breaks?new=true");
    }

    [Theory]
    [InlineData(390, true)]
    [InlineData(1440, false)]
    public async Task It_fits_and_can_be_read_by_everyone(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new", width, dark: dark);
        var page = window.Page;
        await StartAsync(page);
        await page.FillAsync("#f-text", await TextAsync("fixtures-07-cup-windows.csv"));
        await page.Locator(".rows").WaitForAsync();
        foreach (var summary in await page.Locator("summary").AllAsync()) await summary.ClickAsync();
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    private static Task StartAsync(IPage page) => ListWindow.StartSeasonAsync(page, "2026-07-06");

    private static async Task TakeAsync(IPage page, string address, string file)
    {
        await page.GotoAsync(address);
        await page.SetInputFilesAsync("#f-file", Path.Combine(Cases, file));
        await ListWindow.TakeAsync(page);
    }

    private static Task<string> TextAsync(string file) => File.ReadAllTextAsync(Path.Combine(Cases, file));
}
