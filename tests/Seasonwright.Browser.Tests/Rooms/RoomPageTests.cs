using Microsoft.Playwright;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;

namespace Seasonwright.Browser.Tests.Rooms;

/// <summary>The room of the demo, shared with invented juniors. It is Monday 18 October 2027.</summary>
public sealed class RoomPageTests(BrowserFixture browser)
{
    private static readonly DateOnly Monday = RunningWorkspace.Today;

    /// <summary>Legs on Tuesday at five in the room, power on Wednesday in none, practice on Wednesday evening.</summary>
    private static async Task JuniorsAsync(Workspace workspace)
    {
        var room = (await workspace.ClubAsync()).Facilities.Single().Room;
        Session On(string id, int day, int hour, SessionKind kind) => new(new(id), Monday.AddDays(day), Clock.SlotOf(new(hour, 0)), kind, new Minutes(60), new Rpe(6), Start: new(hour, 0));
        await workspace.CreateAsync(workspace.LocalActor, Guid.NewGuid(), null, [],
        [
            new StartSeason(Monday, DayOfWeek.Monday, [new("w1"), new("w2")], new("Harbour Vale juniors")),
            new SetSession(On("legs", 1, 17, SessionKind.LowerStrength) with { Room = room.Id, Place = room.Name }),
            new SetSession(On("power", 2, 16, SessionKind.Power)), new SetSession(On("practice", 2, 18, SessionKind.Practice)),
        ]);
    }

    [Fact]
    public async Task A_session_is_dragged_with_its_clash_told_all_are_proposed_taken_and_taken_back()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true, with: JuniorsAsync);
        await using var window = await browser.OpenAsync(workspace, "/room/strength-room", 1280);
        var page = window.Page;
        await page.Locator(".room-page[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator(".rail a.active")).ToHaveTextAsync("Rooms");
        await Assertions.Expect(page.Locator(".in-no-room .room-session")).ToHaveCountAsync(2);
        await Assertions.Expect(page.Locator(".supervision")).ToContainTextAsync("young athletes are never alone");
        await window.AssertFitsAsync();

        // Over practice the clash stands at the pointer before anything is let go; let go, the page asks.
        var legs = page.Locator(".room-day .room-session", new() { HasText = "Lower-body strength" });
        await DragAsync(page, legs, 2, "18:00");
        await Assertions.Expect(page.Locator(".drag-says.no")).ToContainTextAsync("Harbour Vale juniors, Lower-body strength: the team is at practice, Wed 18:00-19:00.");
        await page.Mouse.UpAsync();
        await Assertions.Expect(page.Locator(".panel h2")).ToHaveTextAsync("Lower-body strength should not lie there");
        await window.AssertAccessibleAsync(".room-page");
        await page.Locator(".panel").GetByRole(AriaRole.Button, new() { Name = "Leave it" }).ClickAsync();
        await Assertions.Expect(legs).ToHaveAttributeAsync("data-begins", "17:00");

        // Where nothing is against it, it goes; by key half an hour further.
        await DragAsync(page, legs, 2, "15:00");
        await Assertions.Expect(page.Locator(".drag-says")).ToHaveTextAsync("15:00 ✓");
        await page.Mouse.UpAsync();
        var moved = page.Locator(".room-day").Nth(2).Locator(".room-session");
        await Assertions.Expect(moved).ToHaveAttributeAsync("data-begins", "15:00");
        await moved.FocusAsync();
        await page.Keyboard.PressAsync("Alt+ArrowDown");
        await Assertions.Expect(moved).ToHaveAttributeAsync("data-begins", "15:30");
        await Assertions.Expect(moved).ToBeFocusedAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Propose" }).ClickAsync();
        await Assertions.Expect(page.Locator(".panel h3")).ToHaveTextAsync(["Harbour Vale", "Harbour Vale juniors"]);
        await window.AssertAccessibleAsync(".room-page");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".in-no-room")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator(".room-day .room-session")).ToHaveCountAsync(3);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator(".in-no-room .room-session")).ToHaveCountAsync(2);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task What_is_typed_wrong_is_told_beside_its_field_and_changes_nothing()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/rooms", 768);
        var page = window.Page;
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Rooms");
        await page.GetByRole(AriaRole.Link, new() { Name = "Add a room" }).ClickAsync();
        (string Field, string Typed, string Said)[] wrong =
        [
            ("name", "", "Give the room a name."), ("places", "many", "'many' is no whole number"), ("coaches", "", "How many?"),
            ("open-1", "early", "'early' says no hours"), ("open-2", "25:00-26:00", "says no hours"), ("open-3", "16:00-20:00 21:00", "says no hours"), ("closed", "2027-13-01", "'2027-13-01' is no day"),
        ];
        foreach (var (field, typed, _) in wrong) await page.FillAsync($"[name='{field}']", typed);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the room" }).ClickAsync();
        foreach (var (field, _, said) in wrong) await Assertions.Expect(page.Locator($"#f-{field}-wrong")).ToContainTextAsync(said);
        await window.AssertAccessibleAsync();

        (string Field, string Typed, string Said)[] second =
        [
            ("name", "Strength room", ""), ("places", "0", "0 is not possible here: 1 to 500 is."), ("coaches", "51", "51 is not possible here"),
            ("open-1", "16:15-20:00", "from half hour to half hour"), ("open-2", "20-16", "It closes before it opens"), ("open-3", "16-20, 19:30-22", "overlap"), ("closed", "1800-01-01", "1800"),
        ];
        foreach (var (field, typed, _) in second) await page.FillAsync($"[name='{field}']", typed);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the room" }).ClickAsync();
        foreach (var (field, _, said) in second.Where(one => one.Said.Length > 0)) await Assertions.Expect(page.Locator($"#f-{field}-wrong")).ToContainTextAsync(said);

        foreach (var (field, typed) in new[] { ("places", "24"), ("coaches", "2"), ("open-1", "7-12, 16:00-21:30"), ("open-2", ""), ("open-3", ""), ("closed", "24 Dec 2027 - 2 Jan 2028") }) await page.FillAsync($"[name='{field}']", typed);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the room" }).ClickAsync();
        await Assertions.Expect(page.Locator(".season-head p").First).ToHaveTextAsync("24 places, 2 coaches · Mon 07:00-12:00, 16:00-21:30");

        // Two tabs of the form: what the first one kept is not overwritten by the second, which is told.
        await page.GetByRole(AriaRole.Link, new() { Name = "Change the room" }).ClickAsync();
        await page.Locator("[name='coaches']").WaitForAsync();
        var other = await page.Context.NewPageAsync();
        await other.GotoAsync(page.Url);
        await other.FillAsync("[name='places']", "12");
        await other.GetByRole(AriaRole.Button, new() { Name = "Save the room" }).ClickAsync();
        await Assertions.Expect(other.Locator(".season-head p").First).ToContainTextAsync("12 places");
        await page.FillAsync("[name='coaches']", "3");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save the room" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
        await other.ReloadAsync();
        await Assertions.Expect(other.Locator(".season-head p").First).ToContainTextAsync("12 places, 2 coaches");
        Assert.Empty(window.Complaints);
    }

    /// <summary>Takes a session at its upper edge and holds it over a half hour of a day, counted from Monday.</summary>
    private static async Task DragAsync(IPage page, ILocator session, int day, string start)
    {
        await page.EvaluateAsync("scrollTo(0, 0)");
        var from = (await session.BoundingBoxAsync())!;
        var to = (await page.Locator(".room-day").Nth(day).Locator($".half[data-start='{start}']").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(from.X + 20, from.Y + 4);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(to.X + 50, to.Y + 30, new() { Steps = 3 });
        await Assertions.Expect(page.Locator(".half.cannot").First).ToBeVisibleAsync();
        await page.Mouse.MoveAsync(to.X + 50, to.Y + 5, new() { Steps = 3 });
    }
}
