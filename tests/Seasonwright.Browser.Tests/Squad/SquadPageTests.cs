using Microsoft.Playwright;
using Seasonwright.Browser.Tests.Lists;

namespace Seasonwright.Browser.Tests.Squad;

/// <summary>The roster and one player's page, with the demo's invented squad. It is Monday 18 October 2027.</summary>
public sealed class SquadPageTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(360, true)]
    [InlineData(1440, true)]
    public async Task The_squad_is_shown_at_every_width(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", width, dark: dark);
        var page = window.Page;
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(22);
        await Assertions.Expect(page.Locator(".rail a.active")).ToHaveTextAsync("Squad");
        var row = page.Locator(".roster tr").Filter(new() { HasText = "Mira Stenlowe" });
        await Assertions.Expect(row).ToContainTextAsync("modified: no jump, no change of direction, no contact, at most 40 minutes; review Fri 22 Oct");
        await Assertions.Expect(row).ToContainTextAsync("Siri Fenwold, physio or athletic therapist");
        await Assertions.Expect(row).ToContainTextAsync("unconfirmed");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "Ebba Tarnwick" })).ToContainTextAsync("17 under 18");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "Oda Vintersea" })).ToContainTextAsync("Second team (leads Tue, Thu)");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "national team" })).ToHaveCountAsync(2);
        await window.AssertFitsAsync(768);
        await window.AssertAccessibleAsync();

        await page.ClickAsync("text=Mira Stenlowe");
        await page.Locator(".report").WaitForAsync();
        foreach (var summary in await page.Locator("summary").AllAsync()) await summary.ClickAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await page.ClickAsync("text=Back to the squad");
        await page.ClickAsync("text=Add a player");
        await page.Locator("#f-family").WaitForAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Theory]
    [InlineData(360)]
    [InlineData(768)]
    public async Task A_physios_message_is_recorded_by_touch_and_answered(int width)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", width, 1024, touch: true);
        var page = window.Page;
        await page.TapAsync("text=Ida Norlund");
        await page.Locator(".report").WaitForAsync();
        foreach (var toggle in await page.Locator(".toggle").AllAsync())
        {
            if (await toggle.BoundingBoxAsync() is not { } box) continue;
            Assert.True(box is { Width: >= 44, Height: >= 44 }, await toggle.InnerTextAsync());
        }
        foreach (var label in new[] { "modified", "no jump", "no sprint", "Siri Fenwold, physio or athletic therapist" }) await Toggle(page, label).TapAsync();
        await page.FillAsync("#f-review", "2027-10-21");
        await page.TapAsync(".big-act");
        await Assertions.Expect(page.Locator("#reply-text")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex(
            "^Recorded [0-9]{2}:[0-9]{2}: Ida Norlund modified from today: no sprint, no jump; review Thu 21 Oct\\. Sessions today: 17:00 Upper-body strength: as planned\\. Unconfirmed until you confirm\\.$", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(10)));
        await Assertions.Expect(page.Locator("[data-copies]")).ToBeVisibleAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await page.TapAsync("text=Siri Fenwold has confirmed it");
        await Assertions.Expect(page.Locator(".unconfirmed")).ToHaveCountAsync(0);
        await page.TapAsync("text=Back to the squad");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "Ida Norlund" })).ToContainTextAsync("modified: no sprint, no jump; review Thu 21 Oct");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task The_coach_tightens_and_cannot_loosen()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad");
        var page = window.Page;
        await page.ClickAsync("text=Mira Stenlowe");
        // What holds is filled in, so that who tightens only adds.
        await Toggle(page, "no sprint").ClickAsync();
        await Toggle(page, "me, the coach").ClickAsync();
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator(".player .holds")).ToContainTextAsync("no sprint, no jump, no change of direction, no contact, at most 40 minutes");
        await Assertions.Expect(page.Locator("#reply-text")).Not.ToContainTextAsync("Unconfirmed");

        await Toggle(page, "no jump").ClickAsync();
        await Toggle(page, "me, the coach").ClickAsync();
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#state-says")).ToContainTextAsync("only a licensed clinician’s report loosens it");
        await Assertions.Expect(page.Locator(".player .holds")).ToContainTextAsync("no jump");
        await window.AssertAccessibleAsync();

        await Toggle(page, "another doctor").ClickAsync();
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#f-name-wrong")).ToContainTextAsync("must be named");
        await page.FillAsync("#f-name", "Orla Wexcombe");
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#reply-text")).ToContainTextAsync("no sprint, no change of direction, no contact, at most 40 minutes");
        await Assertions.Expect(page.Locator(".player .holds")).Not.ToContainTextAsync("no jump");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task What_is_wrong_stands_beside_its_field_and_nothing_changes()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad");
        var page = window.Page;
        await page.ClickAsync("text=Ida Norlund");
        await page.FillAsync("[name=cap]", "none");
        await page.FillAsync("#f-review", "2027-10-01");
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#state-says")).ToContainTextAsync("Choose full, modified or out");
        await Assertions.Expect(page.Locator("#tags-says")).ToContainTextAsync("whole number from 1 to 300");
        await Assertions.Expect(page.Locator("#who-says")).ToContainTextAsync("Choose who reported it");
        await AssertToldAsync(page, "alert", "Choose who reported it");
        await window.AssertAccessibleAsync();
        await page.FillAsync("[name=cap]", "30");
        await Toggle(page, "modified").ClickAsync();
        await Toggle(page, "me, the coach").ClickAsync();
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#f-review-wrong")).ToContainTextAsync("or in the past");
        await Assertions.Expect(page.Locator("text=Nobody has reported anything")).ToBeVisibleAsync();

        await page.ClickAsync("text=Tell an absence");
        await page.FillAsync("#f-load", "90 x 11");
        await page.ClickAsync("text=Keep the absence");
        await Assertions.Expect(page.Locator("#f-kind-wrong")).ToContainTextAsync("Choose why");
        await Assertions.Expect(page.Locator("#f-first-wrong")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#f-load-wrong")).ToContainTextAsync("‘90 x 11’ is not read");
        await page.SelectOptionAsync("#f-kind", "NationalTeam");
        await page.FillAsync("#f-first", "2027-10-25");
        await page.FillAsync("#f-last", "2027-10-31");
        await page.FillAsync("#f-load", "90 x 6,5");
        await page.ClickAsync("text=Keep the absence");
        await Assertions.Expect(page.Locator("section[aria-labelledby=absences]")).ToContainTextAsync("national team Mon 25 Oct – Sun 31 Oct, 585 AU a day, 4095 AU in all");
        await page.ClickAsync("text=Tell an absence");
        await page.SelectOptionAsync("#f-kind", "School");
        await page.FillAsync("#f-first", "2027-10-31");
        await page.FillAsync("#f-load", "5000");
        await page.ClickAsync("text=Keep the absence");
        await AssertToldAsync(page, "alert", "at most 4800 AU");
        await Assertions.Expect(page.Locator("#f-load-wrong")).ToContainTextAsync("at most 4800 AU");
        await Assertions.Expect(page.Locator("#f-load")).ToHaveValueAsync("5000");
        await page.FillAsync("#f-load", "50");
        await page.ClickAsync("text=Keep the absence");
        await Assertions.Expect(page.Locator("#f-first-wrong")).ToContainTextAsync("national team, 25 Oct 2027 to 31 Oct 2027");
        await AssertToldAsync(page, "alert", "overlap");
        // A day outside the season is told with its year.
        await page.FillAsync("#f-first", "2028-10-16");
        await page.ClickAsync("text=Keep the absence");
        await Assertions.Expect(page.Locator("section[aria-labelledby=absences]")).ToContainTextAsync("school Mon 16 Oct 2028, 50 AU a day");
        await AssertToldAsync(page, "status", "Recorded: school Mon 16 Oct 2028, 50 AU a day.");
        await page.Locator("li").Filter(new() { HasText = "school" }).GetByText("Take back").ClickAsync();
        await Assertions.Expect(page.Locator("section[aria-labelledby=absences] li")).ToHaveCountAsync(1);
        await AssertToldAsync(page, "status", "The absence is taken back.");
        await page.ClickAsync("text=Take back");
        await Assertions.Expect(page.Locator("section[aria-labelledby=absences]")).ToContainTextAsync("None told");
        await page.ClickAsync("text=Tell an absence");
        await page.SelectOptionAsync("#f-kind", "NationalTeam");
        await page.FillAsync("#f-first", "2027-10-25");
        await page.FillAsync("#f-last", "2027-10-31");
        await page.FillAsync("#f-load", "Mon 90,5 x 6\nTue 60 x 4");
        await page.ClickAsync("text=Keep the absence");
        await AssertToldAsync(page, "alert", "‘Mon 90,5 x 6’ is not read");
        await Assertions.Expect(page.Locator("#f-load")).ToHaveValueAsync("Mon 90,5 x 6\nTue 60 x 4");
        await page.FillAsync("#f-load", "Mon 90 x 6\nTue 60 x 4\nThu match 90 x 8\n0");
        await page.ClickAsync("text=Keep the absence");
        await AssertToldAsync(page, "status", "Recorded: national team Mon 25 Oct – Sun 31 Oct, Mon 540 AU, Tue 240 AU, Thu 720 AU, other days 0 AU, 1500 AU in all.");
        await page.ClickAsync("text=Take back");

        await page.ClickAsync("text=Change the player");
        await page.FillAsync("#f-mass", "6");
        await page.ClickAsync("text=Keep the changes");
        await Assertions.Expect(page.Locator("#f-mass-says")).ToContainTextAsync("between 20 and 250 kg");
        await page.FillAsync("#f-mass", "62,5");
        await page.FillAsync("#f-number", "44");
        await page.ClickAsync("text=Keep the changes");
        await AssertToldAsync(page, "status", "Recorded. No. 44");
        await Assertions.Expect(page.Locator(".lead")).ToContainTextAsync("No. 44 · right wing · age 24 · 6 years of strength training · 62.5 kg");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_player_is_put_into_a_group_with_dates_and_the_squad_is_narrowed_to_it()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", 390, dark: true);
        var page = window.Page;
        await Assertions.Expect(page.Locator(".roster .group")).ToHaveTextAsync(["Rookies", "Rookies", "Rookies", "Harbour Vale · Second team (leads Tue, Thu)"]);
        await page.ClickAsync(".states >> text=Rookies");
        await Assertions.Expect(page.Locator(".roster .what")).ToHaveTextAsync(["Eira Longmead", "Ebba Tarnwick", "Oda Vintersea"]);
        await window.AssertAccessibleAsync();
        await page.ClickAsync(".states >> text=Everyone");
        await page.ClickAsync("text=Ida Norlund");
        await Toggle(page, "Rookies").ClickAsync();
        await page.FillAsync(".in-group [name^=from]", "2030-01-01");
        await page.ClickAsync("text=Keep the groups");
        await Assertions.Expect(page.Locator(".in-group .wrong")).ToContainTextAsync("The season runs from");
        await AssertToldAsync(page, "alert", "The season runs from");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await page.FillAsync(".in-group [name^=from]", "2027-10-25");
        await page.FillAsync(".in-group [name^=to]", "2027-12-19");
        await page.ClickAsync("text=Keep the groups");
        await AssertToldAsync(page, "status", "Recorded: Rookies.");
        await Assertions.Expect(page.Locator(".lead")).ToContainTextAsync("Rookies from Mon 25 Oct to Sun 19 Dec");
        await Assertions.Expect(Toggle(page, "Rookies").Locator("input")).ToBeCheckedAsync();
        await page.ClickAsync("text=Back to the squad");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "Ida Norlund" })).ToContainTextAsync("Rookies from Mon 25 Oct to Sun 19 Dec");
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task Who_comes_back_is_shown_with_the_load_brought_along()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/squad", 1024);
        var page = window.Page;
        // What restricts somebody is read at a glance, on a tablet too.
        var holds = await page.Locator(".roster .holds.modified").BoundingBoxAsync();
        Assert.True(holds!.Height < 110, $"{holds.Height} px high");
        await page.ClickAsync("text=Ida Norlund");
        await page.ClickAsync("text=Tell an absence");
        await page.SelectOptionAsync("#f-kind", "NationalTeam");
        await page.FillAsync("#f-first", "2027-10-11");
        await page.FillAsync("#f-last", "2027-10-17");
        await page.FillAsync("#f-load", "80 x 6");
        await page.ClickAsync("text=Keep the absence");
        await Assertions.Expect(page.Locator(".player .back")).ToHaveTextAsync("back since today: national team, 7 days, 3360 AU outside (1 day since it ended)");
        await page.ClickAsync("text=Back to the squad");
        await Assertions.Expect(page.Locator(".roster tr").Filter(new() { HasText = "Ida Norlund" })).ToContainTextAsync("back since today: national team, 7 days, 3360 AU outside");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_kept_list_becomes_the_squad_players_come_leave_and_are_erased_without_a_script()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        string squad;
        await using (var window = await browser.OpenAsync(workspace, "/seasons/new"))
        {
            await ListWindow.StartSeasonAsync(window.Page, "2027-07-05");
            await window.Page.GotoAsync(squad = window.Page.Url.Replace("/fixtures?new=true", "/squad", StringComparison.Ordinal));
            await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync("Nobody is in the squad yet");
            await window.AssertAccessibleAsync();
        }
        await using var plain = await browser.OpenAsync(workspace, new Uri(squad).PathAndQuery, script: false);
        var page = plain.Page;
        await page.ClickAsync(".go >> text=Bring a squad list");
        await page.FillAsync("#f-text", "No;Name;Position;Born\n7;Halvorsen, Runa;left back;2001-03-14\n9;Storm, Ida;pivot;\n");
        await page.ClickAsync("button[value=draw]");
        await page.ClickAsync("button[value=take]");
        await page.GotoAsync(squad);
        await Assertions.Expect(page.Locator(".take-list")).ToContainTextAsync("2 people of the kept squad list are not in the squad yet: Runa Halvorsen, Ida Storm.");
        await page.ClickAsync("text=Take them into the squad");
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator(".take-list")).ToHaveCountAsync(0);
        await page.ClickAsync("text=Add a player");
        await page.ClickAsync("text=Add to the squad");
        await Assertions.Expect(page.Locator("#f-family-wrong")).ToContainTextAsync("needs a name");
        await page.FillAsync("#f-given", "Sanna");
        await page.FillAsync("#f-family", "Fjeldmark");
        await page.ClickAsync("text=Add to the squad");
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(3);
        await page.ClickAsync("text=Add a player");
        await page.FillAsync("#f-given", "sanna");
        await page.FillAsync("#f-family", "Fjeldmark");
        await page.ClickAsync("text=Add to the squad");
        await Assertions.Expect(page.Locator("#f-another-wrong")).ToContainTextAsync("is in the squad already");
        await AssertToldAsync(page, "alert", "is in the squad already");
        await Toggle(page, "Another person of this name").ClickAsync();
        await page.ClickAsync("text=Add to the squad");
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(4);
        await AssertToldAsync(page, "status", "sanna Fjeldmark is in the squad.");

        await page.ClickAsync("text=Ida Storm");
        await Toggle(page, "out").ClickAsync();
        await Toggle(page, "the athlete").ClickAsync();
        await page.ClickAsync(".big-act");
        await Assertions.Expect(page.Locator("#reply-text")).ToContainTextAsync("Ida Storm out from today");
        await Assertions.Expect(page.Locator("[data-copies]")).ToBeHiddenAsync();
        await page.ClickAsync("text=Leaves the team");
        await page.FillAsync("#f-leaves", "2027-10-17");
        await page.ClickAsync("text=Keep the last day");
        await page.ClickAsync("text=Back to the squad");
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(3);
        await page.ClickAsync("text=1 player has left");
        await page.ClickAsync("text=Ida Storm");
        await page.ClickAsync("text=Erase the player");
        await page.ClickAsync("text=Erase Ida Storm");
        await Assertions.Expect(page.Locator(".roster tbody tr")).ToHaveCountAsync(3);
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("has left");
    }

    /// <summary>What is wrong, and what was recorded, is on the screen and has the focus, so that nobody has to look for it.</summary>
    private static async Task AssertToldAsync(IPage page, string role, string text)
    {
        var told = page.Locator($"[role={role}].says");
        await Assertions.Expect(told).ToHaveCountAsync(1);
        await Assertions.Expect(told).ToContainTextAsync(text);
        await Assertions.Expect(told).ToBeFocusedAsync();
        await Assertions.Expect(told).ToBeInViewportAsync();
    }

    private static ILocator Toggle(IPage page, string label) => page.Locator(".toggle").Filter(new() { HasTextRegex = new($"^\\s*{System.Text.RegularExpressions.Regex.Escape(label)}\\s*$", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(10)) });
}
