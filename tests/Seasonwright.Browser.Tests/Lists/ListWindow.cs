using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Lists;

/// <summary>What the tests of the list pages do alike.</summary>
internal static class ListWindow
{
    /// <summary>Answers the first of the three questions; the page of fixtures is then open.</summary>
    public static async Task StartSeasonAsync(IPage page, string first)
    {
        await page.FillAsync("#f-name", "Harbour Vale");
        await page.FillAsync("#f-first", first);
        await page.PressAsync("#f-first", "Tab");
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync("**/fixtures?new=true");
    }

    /// <summary>Takes the list in and waits until another page is open.</summary>
    public static async Task TakeAsync(IPage page)
    {
        var here = page.Url;
        await Assertions.Expect(page.Locator("button[value=take]")).ToBeEnabledAsync();
        await page.ClickAsync("button[value=take]");
        await page.WaitForURLAsync(url => url != here);
    }
}
