using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using Seasonwright.Browser.Tests;

namespace Seasonwright.Bench.Browser;

/// <summary>What open Year pages cost the workspace in memory, and how long an edit takes to reach them all.</summary>
internal static class PagesProof
{
    private const int Edits = 30;

    public static async Task Run(IBrowser browser, string program, int pages)
    {
        await using var workspace = await WorkspaceProcess.StartAsync(demo: true, program: program);
        using var process = Process.GetProcessById(workspace.Id);
        using (var client = new HttpClient { BaseAddress = new Uri(workspace.Address.GetLeftPart(UriPartial.Authority)) })
            for (var i = 0; i < pages; i++) await client.GetStringAsync("/year");
        var rows = new List<(string, long)> { ($"{pages} Year pages sent, none open", Memory()) };
        var windows = new List<MeasuredYear>();
        for (var i = 1; i <= pages; i++)
        {
            windows.Add(await MeasuredYear.OpenAsync(browser, workspace));
            if (i == 1 || i == pages) rows.Add(($"{i} open", Memory()));
        }
        var all = new Sample();
        for (var edit = 0; edit < Edits; edit++)
        {
            var number = await windows[0].Page.EvaluateAsync<long>("() => Number(document.querySelector('.year').dataset.number)");
            var watch = Stopwatch.StartNew();
            await windows[0].Page.EvaluateAsync("""
                async load => {
                  const week = JSON.parse(document.querySelector('.year').dataset.weeks)[20].id;
                  await fetch(location.pathname + '/gestures', { method: 'POST', headers: { 'Content-Type': 'application/json' },
                    body: JSON.stringify({ id: crypto.randomUUID(), basedOn: Number.MAX_SAFE_INTEGER, knows: [], on: 'season', act: 'edit', edits: [{ edit: 'setWeekLoad', first: week, last: week, load }] }) });
                }
                """, 1000 + edit);
            await Task.WhenAll(windows.Select(window => window.Page.WaitForFunctionAsync("number => Number(document.querySelector('.year').dataset.number) > number", number)));
            all.Add(watch.Elapsed.TotalMilliseconds);
        }
        rows.Add(($"{pages} open, after {Edits} edits seen by all", Memory()));
        foreach (var window in windows) await window.DisposeAsync();
        Console.WriteLine("| | memory of the workspace's process, MiB |");
        Console.WriteLine("|---|---|");
        foreach (var (what, memory) in rows) Console.WriteLine($"| {what} | {memory.ToString(CultureInfo.InvariantCulture)} |");
        Console.WriteLine();
        Console.WriteLine($"An edit made in one of {pages} windows, all in one browser on this machine, was in every one after {all} ms (median / 95th / 99th of {Edits}).");

        long Memory()
        {
            process.Refresh();
            return process.WorkingSet64 / 1048576;
        }
    }
}
