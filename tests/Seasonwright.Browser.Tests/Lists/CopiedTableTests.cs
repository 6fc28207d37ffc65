using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests.Lists;

/// <summary>Tables copied from a web page, and files that no list is, at the pages that take lists in.</summary>
public sealed class CopiedTableTests(BrowserFixture browser)
{
    private const string Page = """
        <meta charset="utf-8"><h2>Round 1</h2><table><tr><th>Date<th>Time<th>Home<th>Away<tr><td rowspan="2">Sat 5 Sep 2026<td>18:00<td>Harbour Vale<td>Kalnes<tr><td>20:00<td>Turnes<td>Brovik</table>
        <h2>Round 2</h2><table><tr><th>Date<th>Time<th>Home<th>Away<tr><td>Sat 12 Sep 2026<td>16:30<td>Brovik<td>Harbour Vale<tr><td colspan="4"><img src="/never.png" onerror="document.title='run'">Turnes: bye</table>
        """;

    /// <summary>The clipboard of a browser that a page was copied in: the same as HTML and as text.</summary>
    private const string Paste = """
        (html) => {
          const copied = new DataTransfer();
          copied.setData('text/html', html);
          copied.setData('text/plain', 'no table');
          document.querySelector('#f-text').dispatchEvent(new ClipboardEvent('paste', { clipboardData: copied, bubbles: true, cancelable: true }));
        }
        """;

    [Fact]
    public async Task A_table_copied_with_joined_cells_is_read_whole_and_nothing_of_it_is_run_or_fetched()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await ListWindow.StartSeasonAsync(page, "2026-07-06");
        var fetched = false;
        page.Request += (_, request) => fetched |= request.Url.Contains("never", StringComparison.Ordinal);
        await page.EvaluateAsync(Paste, Page);
        await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 2 matches");
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToContainTextAsync(["Kalnes", "Brovik"]);
        // It stands in the box as text from then on, and is taken from there.
        Assert.Contains("Sat 12 Sep 2026\t16:30\tBrovik\tHarbour Vale", await page.InputValueAsync("#f-text"), StringComparison.Ordinal);
        Assert.False(fetched);
        Assert.NotEqual("run", await page.TitleAsync(), StringComparer.Ordinal);
        await window.AssertAccessibleAsync();
        await ListWindow.TakeAsync(page);
        Assert.Empty(window.Complaints);
    }

    [Fact]
    public async Task A_file_larger_than_any_list_is_refused_in_words_and_the_next_one_is_read()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await ListWindow.StartSeasonAsync(page, "2026-07-06");
        var file = Path.GetTempFileName();
        try
        {
            await File.WriteAllBytesAsync(file, new byte[17 << 20], TestContext.Current.CancellationToken);
            await page.SetInputFilesAsync("#f-file", file);
            await Assertions.Expect(page.Locator(".too-large")).ToContainTextAsync("larger than 15 million bytes");
            await window.AssertAccessibleAsync();
            await File.WriteAllTextAsync(file, "Date,Opponent\n2026-09-05,Kalnes\n2026-09-12,Turnes\n", TestContext.Current.CancellationToken);
            await page.SetInputFilesAsync("#f-file", file);
            await Assertions.Expect(page.Locator("button[value=take]")).ToHaveTextAsync("Take in 2 matches");
            await Assertions.Expect(page.Locator(".too-large")).ToBeHiddenAsync();
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Breaks_come_from_a_calendar_too()
    {
        await using var workspace = await WorkspaceHere.OpenAsync();
        await using var window = await browser.OpenAsync(workspace, "/seasons/new");
        var page = window.Page;
        await ListWindow.StartSeasonAsync(page, "2026-07-06");
        await page.GotoAsync(page.Url.Replace("/fixtures", "/breaks", StringComparison.Ordinal));
        await page.SetInputFilesAsync("#f-file", Path.Combine(WorkspaceProcess.Root, "tests", "Cases", "fixtures", "samples", "fixtures-09-calendar.ics"));
        await Assertions.Expect(page.Locator(".rows tbody tr")).ToContainTextAsync(["Camp Skagrund", "Club evening"]);
        await ListWindow.TakeAsync(page);
        Assert.Empty(window.Complaints);
    }
}
