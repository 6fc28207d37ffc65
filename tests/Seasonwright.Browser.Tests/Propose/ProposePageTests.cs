using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Propose;

/// <summary>A year proposed, looked at, and taken whole or in part.</summary>
public sealed class ProposePageTests(BrowserFixture browser)
{
    [Fact]
    public async Task What_is_asked_and_what_is_found_fit_and_can_be_read_by_everyone()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using (var window = await OpenAsync(workspace, "Propose", 768))
        {
            await window.AssertFitsAsync();
            await window.AssertAccessibleAsync();
            await FindAsync(window.Page);
            await AssertComparesAsync(window.Page);
        }
        foreach (var (width, dark) in new[] { (360, true), (1440, false) })
        {
            await using var window = await OpenAsync(workspace, "Propose", width, dark);
            await Assertions.Expect(window.Page.Locator(".weeks-side tr.differs").First).ToBeVisibleAsync();
            // A drawing wider than the page opens where the plans differ.
            await window.Page.WaitForFunctionAsync("""
                () => { const frame = document.querySelector('.two-years .picture').getBoundingClientRect(), marked = document.querySelector('.marked-week').getBoundingClientRect(); return marked.left >= frame.left && marked.left < frame.right - 60; }
                """);
            await window.AssertFitsAsync();
            await AssertNothingOffTheEdgeAsync(window.Page, ".weeks-side");
            await window.AssertAccessibleAsync(".sheet");
            Assert.Empty(window.Complaints);
        }
    }

    /// <summary>Every cell of a row that is shown can be seen without pushing the table aside.</summary>
    private static async Task AssertNothingOffTheEdgeAsync(IPage page, string table) =>
        Assert.Equal(0, await page.EvaluateAsync<int>("table => [...document.querySelectorAll(`${table} tbody tr:not([hidden]) > *`)].filter(cell => { const { left, right } = cell.getBoundingClientRect(); return left < 0 || right > document.querySelector(table).getBoundingClientRect().right + 1; }).length", table));

    /// <summary>A plan that is better on nothing says so first, and taking it is not what the page asks for.</summary>
    private static async Task AssertTakingIsAskedForOnlyWhereBetterAsync(IPage page)
    {
        var isBetter = !(await page.Locator(".against").InnerTextAsync()).Contains("nowhere better", StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".take-bar .main-act")).ToHaveCountAsync(isBetter ? 1 : 0);
        await Assertions.Expect(page.Locator(isBetter ? ".figures-side ~ .against" : ".note.against ~ .figures-side")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".run-state")).Not.ToContainTextAsync("0.0 %");
    }

    /// <summary>How the plan stands to the coach's own, held to the page's own figures, and what it would bring.</summary>
    private static async Task AssertComparesAsync(IPage page)
    {
        await AssertTakingIsAskedForOnlyWhereBetterAsync(page);
        var figures = await page.EvaluateAsync<string[][]>("[...document.querySelectorAll('.figures-side tbody tr')].map(row => [...row.cells].map(cell => cell.innerText.trim()))");
        var against = await page.Locator(".against").InnerTextAsync();
        var clauses = against[(against.IndexOf(':', StringComparison.Ordinal) + 2)..].Split("; ");
        foreach (var (row, name, isMoreBetter) in new[] { (0, "least preparedness", true), (1, "mean preparedness", true), (6, "findings", false) })
        {
            var (own, plan) = (Number(figures[row][1]), Number(figures[row][2]));
            var word = own == plan ? "as good on" : plan > own == isMoreBetter ? "better on" : "worse on";
            Assert.Contains(clauses, clause => clause.StartsWith(word, StringComparison.Ordinal) && clause.Contains(name, StringComparison.Ordinal));
        }
        Assert.Equal(!against.Contains("better on", StringComparison.Ordinal), against.Contains("nowhere better", StringComparison.Ordinal));

        await Assertions.Expect(page.Locator(".brings-findings li").First).ToBeHiddenAsync();
        await page.ClickAsync(".brings-findings summary");
        await Assertions.Expect(page.Locator(".brings-findings li")).ToHaveCountAsync(figures[6][2].Split(' ').Where(word => word.All(char.IsAsciiDigit)).Sum(word => int.Parse(word, System.Globalization.CultureInfo.InvariantCulture)));
        await Assertions.Expect(page.Locator(".brings-findings li").First).ToContainTextAsync("week");

        // What differs is seen in both cells and marked; what most weeks have for a reason is told once.
        Assert.Equal(0, await page.EvaluateAsync<int>("[...document.querySelectorAll('.weeks-side tr.differs')].filter(({ cells }) => cells[3].innerText === cells[4].innerText || !cells[4].querySelector('mark') && !cells[3].querySelector('mark')).length"));
        var usual = (await page.Locator(".take > .sub", new() { HasText = "Where no reason stands" }).InnerTextAsync()).Split(": ", 2)[1];
        await Assertions.Expect(page.Locator(".weeks-side td", new() { HasText = usual })).ToHaveCountAsync(0);

        static decimal Number(string text) => decimal.Parse(text.Split(' ', '\u00a0')[0], System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public async Task A_plan_is_taken_as_one_step_that_undo_takes_back()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await page.FillAsync("#f-largest", "115");
        await FindAsync(page);
        await page.Locator(".take-bar [name=all][value=yes]").ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("propose", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator("svg.drawing").First).ToBeVisibleAsync();

        // The run was for the plan before: it says so, and gives nothing any more.
        await GoAsync(page, "Propose");
        await Assertions.Expect(page.Locator(".note")).ToContainTextAsync("changed since");
        await Assertions.Expect(page.Locator(".take-bar")).ToHaveCountAsync(0);

        await page.GotoAsync("/year");
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("#keeping-words")).ToContainTextAsync("more");
        // What was asked for is out of sight on this page: taken back, it is told.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("#keeping-words")).ToHaveTextAsync("Undid: Said what is asked of a proposal");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
        await GoAsync(page, "Propose");
        await page.ClickAsync(".brief > summary");
        await Assertions.Expect(page.Locator("#f-largest")).ToHaveValueAsync("120");
        await FindAsync(page);
        await Assertions.Expect(page.Locator(".take-bar")).ToBeVisibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Ticked_weeks_and_tracks_alone_are_taken_and_nothing_ticked_is_said()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await FindAsync(page);
        await page.EvaluateAsync("for (const box of document.querySelectorAll('[name=week]')) box.checked = false");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take what is ticked" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("Nothing was ticked");
        await Assertions.Expect(page.Locator("[name=week]").First).ToBeVisibleAsync();
        var week = await page.Locator("[name=week]").First.GetAttributeAsync("value");
        await page.EvaluateAsync("for (const box of [...document.querySelectorAll('[name=week]')].slice(1)) box.checked = false");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take what is ticked" }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("propose", StringComparison.Ordinal));
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "History" }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel")).ToContainTextAsync($"week {int.Parse(week!, System.Globalization.CultureInfo.InvariantCulture) + 1}");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Wrong_wishes_are_told_beside_their_fields_and_stay_typed()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await page.FillAsync("#f-largest", "500");
        await page.FillAsync("#f-tests", "many");
        await page.FillAsync("[name='hours.GeneralPreparation']", "1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Propose the year" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wrong")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator("#f-largest")).ToHaveValueAsync("500");
        await Assertions.Expect(page.Locator("#found")).ToHaveCountAsync(0);

        // A kind of season fills the sheet; what is asked stays in the season.
        await page.GetByRole(AriaRole.Link, new() { Name = "School squad" }).ClickAsync();
        await Assertions.Expect(page.Locator("[name='hours.GeneralPreparation']")).ToHaveValueAsync("8");
        await FindAsync(page);
        await page.ClickAsync(".brief > summary");
        await Assertions.Expect(page.Locator("#f-largest")).ToHaveValueAsync("100");

        // What cannot all hold is named, and each part can be left out.
        await page.FillAsync("#f-largest", "40");
        await FindAsync(page);
        await Assertions.Expect(page.Locator(".clash li").First).ToContainTextAsync("no week is larger");
        await Assertions.Expect(page.Locator("#found .note", new() { HasText = "heavier than the 40 % you allow" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator("#found .against")).ToContainTextAsync("nowhere better");
        await AssertTakingIsAskedForOnlyWhereBetterAsync(page);
        await window.AssertAccessibleAsync(".clash");
        await page.Locator(".clash li").First.GetByRole(AriaRole.Button, new() { Name = "Leave it out" }).ClickAsync();
        await Assertions.Expect(page.Locator("#found .note", new() { HasText = "Left out this once" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".take-bar")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await Assertions.Expect(page.Locator(".clash")).ToHaveCountAsync(0);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_match_that_moves_is_repaired_around_and_told_in_a_list()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Replan", 768);
        var page = window.Page;
        await SetLoadByHandAsync(page, 46, 1000);
        await window.AssertAccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "It moves" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("Say on which day");
        await page.FillAsync("#f-day", "2035-01-01");
        await page.GetByRole(AriaRole.Button, new() { Name = "It moves" }).ClickAsync();
        await Assertions.Expect(page.Locator(".refused")).ToContainTextAsync("not a day that is left");
        await page.SelectOptionAsync("#f-match", new SelectOptionValue { Index = 2 });
        var day = DateOnly.ParseExact(await page.GetAttributeAsync("#f-from", "value") ?? "", "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture).AddDays(20);
        await page.FillAsync("#f-day", day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await page.GetByRole(AriaRole.Button, new() { Name = "It moves" }).ClickAsync();
        await Assertions.Expect(page.Locator(".changes").First).ToContainTextAsync("is now");
        // It keeps its kick-off until another is said, on the same day too.
        var moved = page.Locator(".changes li", new() { HasText = $"is now {day.ToString("ddd d MMM", System.Globalization.CultureInfo.InvariantCulture)}" });
        await Assertions.Expect(moved).Not.ToContainTextAsync("kick-off");
        await page.SelectOptionAsync("#f-match", new SelectOptionValue { Index = 2 });
        await page.FillAsync("#f-day", day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await page.FillAsync("#f-time", "17:45");
        await page.GetByRole(AriaRole.Button, new() { Name = "It moves" }).ClickAsync();
        await Assertions.Expect(moved).ToContainTextAsync("→ 17:45");
        await page.FillAsync("#f-from", "2035-01-01");
        await page.GetByRole(AriaRole.Button, new() { Name = "Repair the plan" }).ClickAsync();
        await Assertions.Expect(page.Locator(".wrong")).ToContainTextAsync("Take a day of the season");
        await Assertions.Expect(page.Locator("#f-week")).Not.ToHaveValueAsync("");
        await page.FillAsync("#f-from", RunningWorkspace.Today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        await page.GetByRole(AriaRole.Button, new() { Name = "Repair the plan" }).ClickAsync();
        await Assertions.Expect(page.Locator(".weeks-side")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        // What was changed by hand since the plan was published stays, and is told.
        await Assertions.Expect(page.Locator("#found h3:text-is('Changed by hand before, and left so') + .changes")).ToContainTextAsync("Week 46");
        // What happened is told once, where it is said.
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What happened" })).ToHaveCountAsync(1);
        await Assertions.Expect(moved).ToHaveCountAsync(1);
        await AssertNothingOffTheEdgeAsync(page, ".weeks-side");
        await AssertTakingIsAskedForOnlyWhereBetterAsync(page);
        // On paper: white, without what is ticked, the reasons open.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".weeks-side .tick").First).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator("html")).ToHaveCSSAsync("background-color", "rgba(0, 0, 0, 0)");
        Assert.Equal(0, await page.EvaluateAsync<int>("[...document.querySelectorAll('.weeks-side tr:not([hidden]) details li')].filter(reason => !reason.checkVisibility({ contentVisibilityAuto: true })).length"));
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        // Most of the season stands.
        Assert.InRange(await page.Locator(".weeks-side tr.differs").CountAsync(), 1, 20);
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".sheet");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it all" }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("replan", StringComparison.Ordinal));
        Assert.Empty(window.Complaints);
    }

    /// <summary>What happened asks for nothing: no second drawing, nothing to take, and the way to publish what happened.</summary>
    [Fact]
    public async Task A_plan_that_has_to_change_nowhere_stands_and_leads_to_publishing()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Replan");
        var page = window.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Repair the plan" }).ClickAsync();
        await Assertions.Expect(page.Locator(".run-state")).ToContainTextAsync("Your plan stands: nothing has to change.", new() { Timeout = 20_000 });
        await Assertions.Expect(page.Locator("#found :is(.take, .two-years, .figures-side, .against)")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".brings-findings summary")).ToContainTextAsync("that the calendar forces");
        // Asked for on the other page, the same holds; what is shown here goes, and that is said before.
        await page.GetByRole(AriaRole.Link, new() { Name = "Propose", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".brief .go")).ToContainTextAsync("The repaired plan that is shown on Replan goes.");
        await page.GotoAsync("/year");
        await GoAsync(page, "Replan");
        await page.Locator(".run-state").GetByRole(AriaRole.Link, new() { Name = "Publish" }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel h2").First).ToHaveTextAsync("Publish");
        await page.Locator(".panel .main-act", new() { HasText = "Publish version" }).ClickAsync();
        await Assertions.Expect(page.Locator(".season-name")).ToContainTextAsync("version 3");
        // What was found was for the plan before.
        await GoAsync(page, "Replan");
        await Assertions.Expect(page.Locator("#found .note")).ToContainTextAsync("Repair again");
        await Assertions.Expect(page.Locator(".run-state a")).ToHaveCountAsync(0);
        Assert.Empty(window.Complaints);
    }

    /// <summary>Proposed again, what was taken is the plan: there is nothing to take, and another proposal is not lost unannounced.</summary>
    [Fact]
    public async Task A_plan_that_is_the_plan_already_is_not_offered()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await page.SelectOptionAsync("#f-plans", "1");
        await FindAsync(page);
        await page.Locator(".take-bar [name=all][value=yes]").ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("propose", StringComparison.Ordinal));
        await GoAsync(page, "Propose");
        await page.ClickAsync(".brief > summary");
        await Assertions.Expect(page.Locator("#f-tests-hint")).ToContainTextAsync("stand in the season already and are left");
        await page.SelectOptionAsync("#f-plans", "1");
        await page.Locator(".brief .main-act").ClickAsync();
        await Assertions.Expect(page.Locator(".against")).ToContainTextAsync("It is your plan", new() { Timeout = 20_000 });
        await Assertions.Expect(page.Locator("#found :is(.take, .two-years)")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Link, new() { Name = "Replan" }).ClickAsync();
        await Assertions.Expect(page.Locator(".replan-sides .go")).ToContainTextAsync("The proposal that is shown on Propose goes.");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_binding_condition_can_be_left_out_to_see_what_it_costs_and_asked_for_again()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await page.SelectOptionAsync("#f-plans", "1");
        await FindAsync(page);
        await page.Locator(".weeks-side details summary").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "What if not?" }).First.ClickAsync();
        await Assertions.Expect(page.Locator("#found .note", new() { HasText = "Left out this once" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".figures-side thead")).ToContainTextAsync("With it asked for");
        await page.GetByRole(AriaRole.Button, new() { Name = "Ask for everything again" }).ClickAsync();
        await Assertions.Expect(page.Locator("#found .note", new() { HasText = "Left out this once" })).ToHaveCountAsync(0);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Both_ways_on_from_a_cup_match_stand_beside_each_other()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose", 768);
        var page = window.Page;
        await page.GetByRole(AriaRole.Link, new() { Name = "Both ways on" }).ClickAsync();
        await page.Locator(".ways-of a").First.ClickAsync();
        await Assertions.Expect(page.Locator(".ways-side tbody tr")).ToHaveCountAsync(8);
        await Assertions.Expect(page.Locator(".ways-side tbody tr", new() { HasText = "Wed 1 Mar" })).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".ways-side tr.differs", new() { HasText = "congested" })).ToHaveCountAsync(2);
        // No week is congested by a match that is off on its way.
        Assert.Equal(2, await page.EvaluateAsync<int>("""
            [...document.querySelectorAll('.ways-side td')].filter(cell => cell.textContent.includes('congested') && cell.lastElementChild.textContent.match(/\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d/g)?.length > 1).length
            """));
        await Assertions.Expect(page.Locator(".ways-side td", new() { HasText = "congested" })).ToHaveCountAsync(2);
        // On paper: without what is only pressed, on one sheet's width, and what differs without colour.
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(page.Locator(".ways-of")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".ways-side .differs > th").First).ToHaveCSSAsync("border-left-width", "3px");
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".sheet");
        // Without the first game of the final there is no other; on a phone both ways are seen.
        await page.SetViewportSizeAsync(390, 844);
        await page.Locator(".ways-of a", new() { HasText = "Game 1" }).ClickAsync();
        await Assertions.Expect(page.Locator(".ways-side td[data-label='If it is played']", new() { HasText = "(key)" })).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator(".ways-side td[data-label='If it is not']", new() { HasText = "(key)" })).ToHaveCountAsync(0);
        await AssertNothingOffTheEdgeAsync(page, ".ways-side");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".sheet");
        Assert.Empty(window.Complaints);
    }

    /// <summary>What comes late, twice or made up: said, or done once; never an error, never a second change.</summary>
    [Fact]
    public async Task Posts_that_are_late_sent_twice_or_made_up_change_nothing_more()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await OpenAsync(workspace, "Propose");
        var page = window.Page;
        await page.SelectOptionAsync("#f-plans", "1");
        await FindAsync(page);
        var season = new Uri(page.Url).AbsolutePath.Replace("/propose", "", StringComparison.Ordinal);
        var run = await page.Locator(".take [name=run]").GetAttributeAsync("value");
        var gesture = await page.Locator(".take [name=gesture]").GetAttributeAsync("value");
        async Task<string> PostAsync(string path, string body, string type = "application/x-www-form-urlencoded") => await page.EvaluateAsync<string>(
            "async ([path, body, type]) => { const answer = await fetch(path, { method: 'POST', body, headers: { 'content-type': type } }); return answer.status + ' ' + new URL(answer.url).pathname + new URL(answer.url).search }", new[] { path, body, type });

        Assert.Equal($"200 {season}/propose?why=gone", await PostAsync($"{season}/propose/take", $"run=nobody&plan=0&all=yes&gesture={gesture}"));
        Assert.Equal($"200 {season}/propose?why=gone", await PostAsync($"{season}/propose/take", $"run={run}&plan=7&all=yes&gesture={gesture}"));
        Assert.Equal($"200 {season}/propose?why=nothing", await PostAsync($"{season}/propose/take", $"run={run}&plan=0&week=-3&week=x&track=Nothing&gesture={gesture}"));
        Assert.StartsWith("400", await PostAsync($"{season}/propose/take", "{}", "application/json"), StringComparison.Ordinal);
        Assert.Equal($"200 {season}/propose?why=gone", await PostAsync($"{season}/propose/without", $"run={run}&condition=nothing&week="));
        Assert.Equal($"200 {season}", await PostAsync($"{season}/propose/take", $"run={run}&plan=0&all=yes&gesture={gesture}"));
        // The same press once more, then another one on what is no longer the plan.
        Assert.Equal($"200 {season}", await PostAsync($"{season}/propose/take", $"run={run}&plan=0&all=yes&gesture={gesture}"));
        Assert.Equal($"200 {season}/propose?why=changed", await PostAsync($"{season}/propose/take", $"run={run}&plan=0&all=yes&gesture={Guid.NewGuid()}"));
        Assert.Equal($"200 {season}/propose?why=changed", await PostAsync($"{season}/propose/without", $"run={run}&condition=ramp&week="));
        await page.GotoAsync("/year");
        await LiveAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeDisabledAsync();
    }

    private static async Task FindAsync(IPage page)
    {
        await page.Locator(".brief .main-act").ClickAsync();
        await Assertions.Expect(page.Locator(".weeks-side")).ToBeVisibleAsync(new() { Timeout = 20_000 });
    }

    /// <summary>Waits for the Year page's script: the driver presses again what it held back while the page was exchanged, and so twice.</summary>
    private static async Task LiveAsync(IPage page) => await page.WaitForSelectorAsync(".year[data-live]");

    private static async Task SetLoadByHandAsync(IPage page, int week, int load)
    {
        await page.GotoAsync("/year");
        await LiveAsync(page);
        var status = await page.EvaluateAsync<int>("""
            async ([week, load]) => { const { dataset } = document.querySelector('.year'), { id } = JSON.parse(dataset.weeks)[week - 1];
              return (await fetch(`/season/${dataset.season}/gestures`, { method: 'POST', headers: { 'Content-Type': 'application/json' },
                body: JSON.stringify({ id: crypto.randomUUID(), basedOn: Number(dataset.number), on: 'season', act: 'edit', edits: [{ edit: 'setWeekLoad', first: id, last: id, load }] }) })).status; }
            """, new[] { week, load });
        Assert.Equal(200, status);
        await GoAsync(page, "Replan");
    }

    private static async Task GoAsync(IPage page, string to)
    {
        await page.GotoAsync("/year");
        await page.GetByRole(AriaRole.Link, new() { Name = "Propose" }).ClickAsync();
        if (to == "Replan") await page.GetByRole(AriaRole.Link, new() { Name = "Replan" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(to);
    }

    private async Task<BrowserWindow> OpenAsync(RunningWorkspace workspace, string to, int width = 1440, bool dark = false)
    {
        var window = await browser.OpenAsync(workspace, "/year", width, dark: dark);
        await GoAsync(window.Page, to);
        return window;
    }
}
