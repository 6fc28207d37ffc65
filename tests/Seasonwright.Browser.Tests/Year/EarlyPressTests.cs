using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Year;

/// <summary>What is pressed before the Year page has come alive, or while it does, is not lost.</summary>
public sealed class EarlyPressTests(BrowserFixture browser, UnchangedDemo demo)
{
    [Fact]
    public async Task A_link_pressed_on_the_picture_and_let_go_on_the_living_page_is_followed()
    {
        await using var picture = await PictureAsync();
        await picture.PressAsync(AriaRole.Link, "Hand out");
        await picture.LiveAsync();
        await picture.Page.Mouse.UpAsync();
        await Assertions.Expect(picture.Page.Locator("h1")).ToHaveTextAsync("Hand out");
    }

    [Fact]
    public async Task A_press_taken_away_from_the_link_is_no_press()
    {
        await using var picture = await PictureAsync();
        await picture.PressAsync(AriaRole.Link, "Hand out");
        await picture.LiveAsync();
        await picture.Page.Mouse.MoveAsync(5, 5);
        await picture.Page.Mouse.UpAsync();
        await picture.Page.GetByRole(AriaRole.Button, new() { Name = "History" }).ClickAsync();
        await Assertions.Expect(picture.Page.Locator(".panel h2").First).ToHaveTextAsync("History");
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_button_of_the_picture_does_its_work_once_the_page_lives(bool heldDown)
    {
        await using var picture = await PictureAsync();
        await picture.PressAsync(AriaRole.Button, "History");
        if (!heldDown) await picture.Page.Mouse.UpAsync();
        await picture.LiveAsync();
        if (heldDown) await picture.Page.Mouse.UpAsync();
        await Assertions.Expect(picture.Page.Locator(".panel h2").First).ToHaveTextAsync("History");
    }

    private async Task<Picture> PictureAsync()
    {
        var window = await browser.OpenAsync(demo.Workspace, "/look.css");
        var held = new TaskCompletionSource();
        await window.Page.RouteAsync("**/_framework/blazor.web*.js", async route =>
        {
            await held.Task;
            await route.ContinueAsync();
        });
        await window.Page.GotoAsync("/year", new() { WaitUntil = WaitUntilState.Commit });
        await window.Page.WaitForSelectorAsync(".year .acts");
        return new Picture(window, held);
    }

    /// <summary>The Year page before it lives: held there by keeping back the script that brings it to life.</summary>
    private sealed class Picture(BrowserWindow window, TaskCompletionSource held) : IAsyncDisposable
    {
        public IPage Page => window.Page;

        public async Task PressAsync(AriaRole role, string name)
        {
            await Page.GetByRole(role, new() { Name = name }).HoverAsync();
            await Page.Mouse.DownAsync();
        }

        public async Task LiveAsync()
        {
            Assert.Null(await Page.QuerySelectorAsync(".year[data-live]"));
            held.TrySetResult();
            await Page.WaitForSelectorAsync(".year[data-live]");
        }

        public ValueTask DisposeAsync()
        {
            held.TrySetResult();
            return window.DisposeAsync();
        }
    }
}
