using Microsoft.Playwright;
using Seasonwright.Core.Boards;
using Seasonwright.Core.Seasons;
using Seasonwright.Wire;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>The demo's session of 28 October led from a tablet: 18 lift, on six racks of which two break.</summary>
public sealed class BoardPageTests(BrowserFixture browser, UnchangedDemo demo)
{
    /// <summary>The rule of what marks come to stands twice, for a board must go on without the workspace: both are given the same marks, many of one instant.</summary>
    [Fact]
    public async Task The_script_and_the_workspace_agree_on_what_marks_come_to()
    {
        var random = new Random(7);
        var marks = Enumerable.Range(1, 120).Select(number => Mark(random, new(number * 7919 % 1000 + 1, 0, 0, new byte[8]), new DateTimeOffset(2027, 10, 28, 9, random.Next(6), 0, TimeSpan.Zero))).DistinctBy(mark => mark.Id).ToArray();
        var state = BoardState.Of(marks);
        random.Shuffle(marks);
        await using var window = await browser.OpenAsync(demo.Workspace, "/", 1024, 768);
        var told = await window.Page.EvaluateAsync<string>("""
            async json => {
              const { held } = await import('/boardstate.js');
              const all = [...held(JSON.parse(json)).values()], of = kind => all.filter(mark => mark.mark === kind);
              return [of('came').filter(mark => mark.how).map(mark => `${mark.person} ${mark.how}`), of('set').filter(mark => mark.how !== 'open').map(mark => `${mark.person} ${mark.item} ${mark.set} ${mark.how} ${mark.weight}`),
                of('swap').filter(mark => mark.exercise).map(mark => `${mark.person} ${mark.item} ${mark.exercise}`), of('rack').filter(mark => mark.isOut).map(mark => mark.rack), of('stand').map(mark => `${mark.person} ${mark.rack}`), of('way').map(mark => mark.way)]
                .map(list => list.sort().join(', ')).join('; ');
            }
            """, $"[{string.Join(',', marks.Select(BoardText.Of))}]");
        Assert.Equal(string.Join("; ", new[]
        {
            state.Came.Select(one => $"{one.Key.Text} {Word(one.Value)}"),
            state.Sets.Values.Select(set => $"{set.Person.Text} {set.Item.Text} {set.Set} {Word(set.How)} {set.Weight}"),
            state.Swaps.Select(swap => $"{swap.Key.Person.Text} {swap.Key.Item.Text} {swap.Value.Text}"),
            state.Out,
            state.Stands.Values.Select(stand => $"{stand.Person.Text} {stand.Rack}"),
            [Word(state.Way!.Value)],
        }.Select(list => string.Join(", ", list.Order(StringComparer.Ordinal)))), told);

        static string Word<T>(T one) where T : struct, Enum => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(one.ToString());
    }

    private static BoardMark Mark(Random random, Guid id, DateTimeOffset at)
    {
        var (person, item, rack) = (new PersonId($"p{random.Next(3)}"), new WorkoutItemId($"i{random.Next(2)}"), $"{random.Next(3)}");
        return random.Next(6) switch
        {
            0 => new CameMark(id, at, person, random.GetItems(Enum.GetValues<Attendance>(), 1)[0]),
            1 or 2 => new SetMark(id, at, person, item, random.Next(1, 3), random.GetItems(Enum.GetValues<SetHow>(), 1)[0], new("back-squat"), new(40 + random.Next(9)), 5),
            3 => new SwapMark(id, at, person, item, random.Next(2) == 0 ? null : new ExerciseId("box-squat")),
            4 => new RackMark(id, at, rack, random.Next(2) == 0),
            _ => random.Next(2) == 0 ? new StandMark(id, at, person, rack) : new WayMark(id, at, random.GetItems(Enum.GetValues<FloorWayKind>(), 1)[0]),
        };
    }

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
        await TapOnAsync(Who("Selma Hartvale", "Late"));
        await TapOnAsync(Who("Dagny Westermoor", "Modified"));
        await TapAsync("All others are here");
        await Assertions.Expect(page.Locator("#board-counts")).ToContainTextAsync("1 late");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync();
        await TapAsync("To the racks");

        // All at once is enough; then two bars break, who lifted there goes elsewhere, and 18 are too many for four racks.
        await TapAsync("Take it");
        await TapOnAsync(Rack("5").GetByRole(AriaRole.Button, new() { Name = "Broken rack 5" }));
        await TapOnAsync(Rack("6").GetByRole(AriaRole.Button, new() { Name = "Broken rack 6" }));
        await Assertions.Expect(page.Locator(".need").First).ToHaveTextAsync("Back squat: 18 athletes on 4 racks are 5 at the fullest, and 4 share one at most.");
        await Assertions.Expect(page.Locator(".row")).ToHaveCountAsync(18);
        await window.AssertAccessibleAsync();
        await TapAsync("Ways out");
        await TapOnAsync(page.Locator("dialog li", new() { HasText = "A/B split" }).GetByRole(AriaRole.Button));
        await Assertions.Expect(page.Locator(".need")).ToHaveCountAsync(0);
        await TapAsync("Start the clock");
        await Assertions.Expect(page.Locator("#board-turn")).ToContainTextAsync("Half A: A");
        await Assertions.Expect(page.GetByLabel("Elsewhere", new() { Exact = true }).Locator(".row")).ToHaveCountAsync(9);
        await window.AssertFitsAsync();
        await Assertions.Expect(page.Locator("#board[data-kept]")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept");

        // A double tap tells one set; a round tells everybody's but hers who is modified, and the next one too.
        await page.Locator("#board:not([data-settling])").WaitForAsync();
        await Row("Karla").Locator(".as-written").DblClickAsync();
        await Assertions.Expect(Row("Karla")).ToContainTextAsync("2 of 4");
        await TapAsync("Take back");
        await Assertions.Expect(Row("Karla")).ToContainTextAsync("1 of 4");
        var round = page.Locator(".rack", new() { HasText = "Dagny" }).Locator("[data-do='round']");
        var beside = page.Locator(".rack", new() { HasText = "Dagny" }).Locator(".row:not(:has(.mark))").First;
        for (var set = 2; set <= 3; set++)
        {
            await TapOnAsync(round);
            await Assertions.Expect(beside).ToContainTextAsync($"{set} of ");
            await page.WaitForTimeoutAsync(400);
        }
        for (var time = 0; time < 2; time++)
        {
            await TapAsync("Take back");
            await page.WaitForTimeoutAsync(400);
        }

        // Cut off: it goes on, opens again, and nothing is lost.
        await page.Context.SetOfflineAsync(true);
        await TapOnAsync(Row("Thea").Locator(".as-written"));
        await page.ReloadAsync();
        await page.Locator("#board[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator("#board-status")).ToContainTextAsync("1 taps wait on this tablet");
        // The first set left six: the rest is heavier by what a day can be, 5 %.
        var before = await WeightAsync("Saga");
        await TapOnAsync(Row("Saga").GetByRole(AriaRole.Button, new() { Name = "change this set" }));
        await TapOnAsync(page.Locator("[data-left='6']"));
        await window.AssertAccessibleAsync("dialog");
        await TapOnAsync(page.Locator("[data-do='save']"));
        await Assertions.Expect(Row("Saga").Locator(".as-written")).ToContainTextAsync("day up");
        Assert.InRange(await WeightAsync("Saga"), before * 1.02, before * 1.065);
        await page.Context.SetOfflineAsync(false);
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept", new() { Timeout = 15_000 });

        // Another exercise for all in two taps; who must not do it keeps their own.
        await TapOnAsync(Row("Karla").Locator(".exercise"));
        await TapOnAsync(page.Locator("dialog tr", new() { HasText = "Front squat" }).GetByRole(AriaRole.Button, new() { Name = "All Front squat" }));
        await Assertions.Expect(Row("Karla").Locator(".exercise")).ToContainTextAsync("A Front squat");
        await TapAsync("Take back");
        await Assertions.Expect(Row("Karla").Locator(".exercise")).ToContainTextAsync("A Back squat");

        // Not done, another place, who comes late, and the rest as written.
        await TapOnAsync(Row("Karla").GetByRole(AriaRole.Button, new() { Name = "change this set" }));
        await TapOnAsync(page.Locator("[data-do='not-done']"));
        await TapOnAsync(page.GetByRole(AriaRole.Button, new() { Name = "Here now: Selma Hartvale" }));
        await Assertions.Expect(page.Locator("dialog")).ToContainTextAsync("minutes are left");
        await TapAsync("Leave nothing");
        await TapAsync("End");
        await TapOnAsync(page.Locator("[data-do='all-as-written']"));
        await TapAsync("End");
        await Assertions.Expect(page.Locator(".sums-list li", new() { HasText = "not done" })).ToContainTextAsync("1");
        // Dagny is modified: what nobody told of her stays open.
        await Assertions.Expect(page.Locator(".sums-list li", new() { HasText = "open" })).Not.ToContainTextAsync("0 sets");
        await TapAsync("Close");
        await Assertions.Expect(page.Locator("#board-status")).ToHaveTextAsync("All kept", new() { Timeout = 15_000 });

        // Another tablet sees the same.
        await using var second = await browser.OpenAsync(workspace, new Uri(page.Url).AbsolutePath, 390, 800, dark: true);
        await second.Page.Locator("#board[data-live]").WaitForAsync();
        // 18 without Dagny, who is modified, and Mira, who has fewer minutes.
        await Assertions.Expect(second.Page.Locator(".row.is-done")).ToHaveCountAsync(16);
        await second.AssertFitsAsync();
        await second.AssertAccessibleAsync();
        Assert.Empty(second.Complaints);
        // While it was cut off, the browser itself says that it could not reach the workspace.
        Assert.DoesNotContain(window.Complaints, complaint => !complaint.StartsWith("Failed to load resource: net::ERR_", StringComparison.Ordinal));

        ILocator Who(string name, string how) => page.GetByRole(AriaRole.Button, new() { Name = $"{how} {name}" });

        ILocator Rack(string name) => page.GetByLabel($"Rack {name}", new() { Exact = true });

        ILocator Row(string name) => page.Locator(".row", new() { HasText = name });

        // Once a panel is gone, the board waits until no second touch can fall through it.
        async Task TapOnAsync(ILocator button)
        {
            await page.Locator("#board:not([data-settling])").WaitForAsync();
            await button.TapAsync();
        }

        Task TapAsync(string name) => TapOnAsync(page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).First);

        async Task<double> WeightAsync(string name) => double.Parse((await Row(name).Locator(".as-written b").InnerTextAsync()).Replace(" kg", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
    }
}
