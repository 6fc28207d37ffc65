using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>The page of exercises with the demo: the book found by words, the team's own written beside it.</summary>
public sealed class ExercisesPageTests(BrowserFixture browser)
{
    [Fact]
    public async Task Exercises_are_found_and_the_teams_own_written()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/gym", 390, 900, dark: true);
        var page = window.Page;
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Exercises" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Exercises");
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await page.GetByLabel("Find").FillAsync("nordic hamstring");
        await Assertions.Expect(page.Locator(".exercise-list summary").First).ToContainTextAsync("Nordic hamstring lower");
        await page.Locator(".exercise-list summary").First.ClickAsync();
        await Assertions.Expect(page.Locator(".exercise-list details[open]")).ToContainTextAsync("lower");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".gym-page");
        await page.GetByLabel("Find").FillAsync("squirrel");
        await Assertions.Expect(page.Locator(".search [role=status]")).ToContainTextAsync("squirrel");

        // A muscle named twice is refused and told; what was typed stays.
        await page.GetByLabel("Name").FillAsync("Squat with chains");
        await page.GetByLabel("Made heavier by").SelectOptionAsync("bar");
        await page.GetByLabel("Another muscle").First.SelectOptionAsync("quadriceps");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("#keeping")).ToHaveAttributeAsync("data-state", "refused");
        await Assertions.Expect(page.GetByLabel("Name")).ToHaveValueAsync("Squat with chains");
        await page.GetByLabel("Another muscle").First.SelectOptionAsync("glutes");
        await page.GetByLabel("Asks of the body").SelectOptionAsync(new[] { "deepKnee", "legs", "spine" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Add", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".season-head")).ToContainTextAsync("1 of them your own");
        await page.GetByLabel("Find").FillAsync("chains");
        await page.Locator(".exercise-list summary").ClickAsync();
        await Assertions.Expect(page.Locator(".exercise-list details[open]")).ToContainTextAsync("no axial load");
        await window.AssertAccessibleAsync(".gym-page");
        await page.Locator(".exercise-list").GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await Assertions.Expect(page.Locator(".season-head")).ToContainTextAsync("0 of them your own");

        // The book's in the team's own way, and as the book has it again.
        await page.GetByLabel("Find").FillAsync("bench press");
        await page.Locator(".exercise-list summary").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it my own way" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Name")).ToHaveValueAsync("Bench press");
        await page.GetByLabel("Name").FillAsync("Bench press, feet up");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator(".exercise-list summary", new() { HasText = "feet up" })).ToHaveCountAsync(1);
        if (await page.Locator(".exercise-list details[open]").CountAsync() == 0) await page.Locator(".exercise-list summary", new() { HasText = "feet up" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "As the book has it" }).ClickAsync();
        await Assertions.Expect(page.Locator(".exercise-list summary", new() { HasText = "feet up" })).ToHaveCountAsync(0);
        // The refused gesture, and nothing else.
        Assert.Contains("409", Assert.Single(window.Complaints), StringComparison.Ordinal);
    }
}
