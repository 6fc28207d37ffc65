using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Gym;

/// <summary>What the demo's gym has: six racks. What changes there changes what everybody lifts.</summary>
public sealed class EquipmentPageTests(BrowserFixture browser)
{
    [Fact]
    public async Task What_there_is_decides_what_is_lifted()
    {
        await using var workspace = await WorkspaceHere.OpenAsync(demo: true);
        await using var window = await browser.OpenAsync(workspace, "/gym", 1024, 900, touch: true);
        var page = window.Page;
        var koldmere = page.Locator(".who tbody tr", new() { HasText = "Thea Koldmere" });
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await Assertions.Expect(koldmere).ToContainTextAsync("75 kg");
        await page.GetByRole(AriaRole.Link, new() { Name = "What there is" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("What there is to lift with");
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        await window.AssertFitsAsync();
        await window.AssertAccessibleAsync(".gym-page");
        await TypeAsync(page.GetByLabel("Plates, pairs behind an x").First, "lots");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("25x2 20 15 1.25");
        await window.AssertAccessibleAsync(".gym-page");
        await TypeAsync(page.GetByLabel("Plates, pairs behind an x").First, "20 5");
        await Assertions.Expect(page.GetByRole(AriaRole.Alert)).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "One more rack like the last" }).ClickAsync();
        await Assertions.Expect(page.Locator("fieldset.part")).ToHaveCountAsync(7);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("fieldset.part")).ToHaveCountAsync(6);
        await page.GetByLabel("sled").CheckAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "To the gym" }).ClickAsync();
        await page.Locator(".gym-page[data-live]").WaitForAsync();
        // A bar of 15 kg with 20 and 5 a side is the heaviest there is now.
        await Assertions.Expect(koldmere).ToContainTextAsync("65 kg");
        await Assertions.Expect(koldmere).ToContainTextAsync("20 + 5 a side");
        Assert.Empty(window.Complaints);
    }

    private static async Task TypeAsync(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.PressAsync("Tab");
    }
}
