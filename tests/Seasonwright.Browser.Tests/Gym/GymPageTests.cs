using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>The Gym page with the demo, in which two workouts are written. It is Monday 18 October 2027.</summary>
public sealed class GymPageTests(BrowserFixture browser)
{
    [Theory]
    [InlineData(390, true)]
    [InlineData(1024, false)]
    public async Task A_workout_is_written_as_it_is_typed(int width, bool dark)
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/gym", width, 1024, dark: dark, touch: width == 1024);
        var page = window.Page;
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await Assertions.Expect(page.Locator(".rail a.active")).ToHaveTextAsync("Gym");
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".gym-page");

        await TypeAsync(page.GetByLabel("Sets of Back squat"), "5x3 85%");
        await Assertions.Expect(page.GetByLabel("Back squat in week 17")).ToHaveValueAsync("5x3 85%");
        await Assertions.Expect(page.Locator(".sums")).ToContainTextAsync("85 %");
        await Assertions.Expect(page.Locator(".who tbody tr", new() { HasText = "Thea Koldmere" })).ToContainTextAsync("kg");

        // What says no sets is told beside its field and changes nothing.
        await TypeAsync(page.GetByLabel("Sets of Back squat"), "five by five");
        await Assertions.Expect(page.Locator(".item [role=alert]")).ToContainTextAsync("4x5 80%");
        await Assertions.Expect(page.GetByLabel("Sets of Back squat")).ToHaveValueAsync("five by five");
        await Assertions.Expect(page.GetByLabel("Back squat in week 17")).ToHaveValueAsync("5x3 85%");
        await window.AssertAccessibleAsync(".gym-page");
        await TypeAsync(page.GetByLabel("Sets of Back squat"), "5x3 85%");
        await Assertions.Expect(page.Locator(".item [role=alert]")).ToHaveCountAsync(0);

        await TypeAsync(page.GetByLabel("One more exercise in part B"), "Squirrel lift");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Squirrel lift");
        await TypeAsync(page.GetByLabel("One more exercise in part B"), "Box jump");
        await Assertions.Expect(page.Locator(".sums")).ToContainTextAsync("Jump contacts");
        await page.GetByRole(AriaRole.Button, new() { Name = "Box jump up", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".weeks tbody tr").Nth(4)).ToContainTextAsync("Box jump");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take Box jump out", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator(".sums")).Not.ToContainTextAsync("Jump contacts");

        // A week's own figures, left out, and following again.
        await TypeAsync(page.GetByLabel("Back squat in week 18"), "2x2 90%");
        await Assertions.Expect(page.Locator(".weeks td.own input")).ToHaveValueAsync("2x2 90%");
        await TypeAsync(page.GetByLabel("Back squat in week 18"), "-");
        await Assertions.Expect(page.Locator(".weeks td.own input")).ToHaveValueAsync("–");
        await TypeAsync(page.GetByLabel("Back squat in week 18"), "");
        await Assertions.Expect(page.Locator(".weeks td.own")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator(".weeks td.own")).ToHaveCountAsync(1);
        await window.AssertFitsAsync();
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_new_workout_goes_into_a_session_and_onto_cards()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/gym", 1280, 900);
        var page = window.Page;
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New workout" }).ClickAsync();
        await Assertions.Expect(page.Locator(".workouts [aria-current=page]")).ToHaveTextAsync("Workout 3");
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await TypeAsync(page.GetByLabel("Name"), "Legs, fast");
        await Assertions.Expect(page.Locator(".workouts [aria-current=page]")).ToHaveTextAsync("Legs, fast");
        await TypeAsync(page.GetByLabel("In a new part"), "front squat");
        await Assertions.Expect(page.GetByLabel("Sets of Front squat")).ToHaveValueAsync("3x8 r2");
        await TypeAsync(page.GetByLabel("Sets of Front squat"), "4x3 85% 2-0-X-0");
        await page.Locator(".session-list li", new() { HasText = "Lower-body" }).GetByRole(AriaRole.Button).ClickAsync();

        // Everybody's weight, guessed from the back squat until the front squat has a maximum of its own; who is out has none.
        await Assertions.Expect(page.Locator(".who tbody tr", new() { HasText = "Thea Koldmere" })).ToContainTextAsync("kg");
        await Assertions.Expect(page.Locator(".who tbody tr", new() { HasText = "Liv Carrowick" })).ToContainTextAsync("in reserve");
        await Assertions.Expect(page.Locator(".who tbody tr", new() { HasText = "Mira Stenlowe" })).ToContainTextAsync("modified");
        await Assertions.Expect(page.Locator(".who tbody tr", new() { HasText = "Vilde Ashgrove" })).ToContainTextAsync("takes no part");
        await page.Locator(".session-list").GetByRole(AriaRole.Button, new() { Name = "Give the week its figures" }).ClickAsync();
        await Assertions.Expect(page.Locator(".session-list").GetByRole(AriaRole.Button, new() { Name = "Give the week its figures" })).ToHaveCountAsync(0);

        var link = await page.Locator(".session-list").GetByRole(AriaRole.Link, new() { Name = "Cards" }).GetAttributeAsync("href");
        var cards = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), link).ToString());
        Assert.Equal((200, "application/pdf"), (cards.Status, cards.Headers["content-type"]));
        Assert.Equal("%PDF-"u8.ToArray(), (await cards.BodyAsync())[..5]);
        Assert.Equal(404, (await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), link!.Replace("/cards.pdf", "/cards.exe", StringComparison.Ordinal)).ToString())).Status);
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove this workout" }).ClickAsync();
        await Assertions.Expect(page.Locator(".workouts")).Not.ToContainTextAsync("Legs, fast");
        Assert.Empty(window.Complaints);
    }

    /// <summary>As a person does: the whole text anew, then on with Tab.</summary>
    private static async Task TypeAsync(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.PressAsync("Tab");
    }
}
