using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests;

/// <summary>One window, with cookies and storage of its own. It notes what the browser complains of: script errors, things the page's policy refused.</summary>
public sealed class BrowserWindow : IAsyncDisposable
{
    private readonly List<string> complaints = [];

    internal BrowserWindow(IPage page)
    {
        Page = page;
        page.PageError += (_, error) => complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error") complaints.Add(message.Text);
        };
    }

    /// <summary>Nothing is worked out and carried over for the thousands of elements that pass.</summary>
    private static readonly AxeRunOptions OnlyViolations = new() { ResultTypes = [ResultType.Violations] };

    public IPage Page { get; }

    /// <summary>Script errors and refusals of the strict policy since the window was opened.</summary>
    public IReadOnlyList<string> Complaints => complaints;

    /// <summary>No violation of WCAG 2.2 A and AA, and of axe's good practice where it calls it serious.</summary>
    /// <param name="within">Selectors of the parts looked at; none for the whole page.</param>
    public async Task AssertAccessibleAsync(params string[] within)
    {
        var found = within.Length == 0 ? await Page.RunAxe(OnlyViolations) : await Page.RunAxe(new AxeRunContext { Include = [.. within.Select(part => new AxeSelector(part))] }, OnlyViolations);
        Assert.Empty(found.Violations
            .Where(violation => violation.Impact is "serious" or "critical" || violation.Tags.Any(tag => tag.StartsWith("wcag", StringComparison.Ordinal)))
            .Select(violation => $"{violation.Id} ({violation.Impact}): {violation.Help}: {string.Join(" | ", violation.Nodes.Select(node => node.Html))}"));
    }

    /// <summary>Nothing on the page makes it scroll sideways, neither as wide as it is nor in other widths.</summary>
    public async Task AssertFitsAsync(params int[] alsoAt)
    {
        var own = Page.ViewportSize!;
        foreach (var width in alsoAt.Prepend(own.Width))
        {
            if (width != own.Width) await Page.SetViewportSizeAsync(width, own.Height);
            Assert.Equal((width, 0), (width, await Page.EvaluateAsync<int>("() => Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth)")));
        }
        if (alsoAt.Length > 0) await Page.SetViewportSizeAsync(own.Width, own.Height);
    }

    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();
}
