using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Seasonwright.Browser.Tests;

namespace Seasonwright.Bench.Browser;

/// <summary>From the hand's last movement to the frame that shows the edit, kept and drawn anew, on the demo's whole year.</summary>
internal static class RepaintProof
{
    private const int WarmUp = 8;
    private static readonly string[] Parts = ["seen", "sent", "acknowledged", "dom", "frame"];

    public static async Task Run(IBrowser browser, string program, int edits)
    {
        await using var workspace = await WorkspaceProcess.StartAsync(demo: true, program: program);
        var kinds = new Dictionary<string, Func<MeasuredYear, int, Task<JsonElement>>>(StringComparer.Ordinal)
        {
            ["paint a phase over three weeks (click in the menu)"] = PaintPhase,
            ["drag a week's load (release)"] = DragLoad,
            ["move a match by a day (release)"] = MoveMatch,
            ["emphasis by a digit (key)"] = Emphasis,
            ["undo that (key)"] = Undo,
        };
        var measured = kinds.Keys.ToDictionary(kind => kind, _ => Parts.ToDictionary(part => part, _ => new Sample(), StringComparer.Ordinal), StringComparer.Ordinal);
        var rows = kinds.Keys.ToDictionary(kind => kind, _ => new Sample(), StringComparer.Ordinal);
        var (floor, plainAcknowledged, plainFrame) = (new Sample(), new Sample(), new Sample());
        string weeks, tracks;

        await using (var year = await MeasuredYear.OpenAsync(browser, workspace))
        {
            await Prepare(year);
            weeks = await year.Page.EvaluateAsync<string>("() => String(JSON.parse(document.querySelector('.year').dataset.weeks).length)");
            tracks = await year.Page.EvaluateAsync<string>("() => String(document.querySelectorAll('g.track').length)");
            // Kinds in turn, so that a change of the machine's mood meets all alike; the floor between them.
            for (var round = 0; round < WarmUp + (edits + kinds.Count - 1) / kinds.Count; round++)
            {
                foreach (var (kind, act) in kinds)
                {
                    var times = await act(year, round);
                    if (round < WarmUp) continue;
                    foreach (var part in Parts) measured[kind][part].Add(times.GetProperty(part).GetDouble());
                    rows[kind].Add(times.GetProperty("rows").GetDouble());
                }
                floor.Add((await KeyAsync(year, "stopwatch.floor()")).GetDouble());
            }
        }
        await using (var plain = await MeasuredYear.OpenAsync(browser, workspace, live: false))
        {
            for (var round = 0; round < WarmUp + 60; round++)
            {
                var times = await KeyAsync(plain, $$"""stopwatch.plain([{ edit: 'setWeekLoad', first: JSON.parse(document.querySelector('.year').dataset.weeks)[{{20 + round % 5}}].id, last: JSON.parse(document.querySelector('.year').dataset.weeks)[{{20 + round % 5}}].id, load: {{1500 + round}} }])""");
                if (round < WarmUp) continue;
                plainAcknowledged.Add(times.GetProperty("acknowledged").GetDouble());
                plainFrame.Add(times.GetProperty("frame").GetDouble());
            }
        }

        Console.WriteLine($"{weeks} weeks, {tracks} tracks; {measured.Values.Sum(kind => kind["frame"].Count)} edits after {WarmUp} rounds to warm up. Milliseconds since the browser got the event: median / 95th / 99th.");
        Console.WriteLine();
        Console.WriteLine("| edit | first seen (ghost or mark) | acknowledged, on the disk | page changed | **frame with the kept drawing** | tracks repainted, median |");
        Console.WriteLine("|---|---|---|---|---|---|");
        var all = Parts.ToDictionary(part => part, _ => new Sample(), StringComparer.Ordinal);
        foreach (var (kind, parts) in measured)
        {
            foreach (var part in Parts) all[part].Add(parts[part]);
            Console.WriteLine($"| {kind} | {parts["seen"]} | {parts["acknowledged"]} | {parts["dom"]} | {parts["frame"]} | {rows[kind].At(50).ToString("0", CultureInfo.InvariantCulture)} |");
        }
        Console.WriteLine($"| **all** | {all["seen"]} | {all["acknowledged"]} | {all["dom"]} | **{all["frame"]}** | |");
        Console.WriteLine($"| the plain way: post, fetch the page, put its drawing in place | | {plainAcknowledged} | | {plainFrame} | {tracks} |");
        Console.WriteLine($"| the disk alone: 1 KiB appended to a file and flushed | | {DiskAlone()} | | | |");
        Console.WriteLine($"| the least: a key, a mark changed by a script, no server | | | | {floor} | |");
    }

    /// <summary>Makes the year 53 weeks long and full, with one level in the weeks whose emphasis will be edited, so that every edit changes something.</summary>
    private static async Task Prepare(MeasuredYear year) => await year.Page.EvaluateAsync("""
        async () => {
          const weeks = JSON.parse(document.querySelector('.year').dataset.weeks).map(week => week.id), fresh = [];
          for (let number = weeks.length + 1; number <= 53; number++) fresh.push(`w${number}`);
          const [first, last] = [fresh[0], fresh.at(-1)];
          const edits = [
            { edit: 'resize', weeks: 53, newWeeks: fresh },
            { edit: 'setWeekLoad', first, last, load: 1200 }, { edit: 'setWeekKind', first, last, kind: 'building' },
            { edit: 'setPractices', first, last, practices: { count: 4 } },
            { edit: 'setEmphasis', first: weeks[25], last: weeks[28], quality: 'power', emphasis: 'none' },
            { edit: 'setEmphasis', first: weeks[25], last: weeks[28], quality: 'power', emphasis: 'focus' }];
          const answer = await fetch(location.pathname + '/gestures', { method: 'POST', headers: { 'Content-Type': 'application/json' },
            body: JSON.stringify({ id: crypto.randomUUID(), basedOn: Number.MAX_SAFE_INTEGER, knows: [], on: 'season', act: 'edit', edits }) });
          const { kept, refused } = await answer.json();
          if (!kept) throw new Error(refused);
          while (Number(document.querySelector('.year').dataset.number) < kept) await new Promise(requestAnimationFrame);
        }
        """);

    private static async Task<JsonElement> PaintPhase(MeasuredYear year, int round)
    {
        await year.AtAsync("#phases-w30");
        await year.Page.Mouse.DownAsync();
        await year.AtAsync("#phases-w32");
        await year.Page.Mouse.UpAsync();
        var button = $"#choose-phases button[data-key='{1 + round % 5}']";
        await year.Page.WaitForSelectorAsync(button);
        await year.AtAsync(button);
        return await year.MeasureAsync("click", async () =>
        {
            await year.Page.Mouse.DownAsync();
            await year.Page.Mouse.UpAsync();
        });
    }

    private static async Task<JsonElement> DragLoad(MeasuredYear year, int round)
    {
        var cell = $"#load-w{20 + round % 5}";
        await year.AtAsync(cell, 0.9);
        await year.Page.Mouse.DownAsync();
        await year.AtAsync(cell, 0.2 + 0.02 * (round / 5 % 20));
        return await year.MeasureAsync("pointerup", () => year.Page.Mouse.UpAsync());
    }

    private static async Task<JsonElement> MoveMatch(MeasuredYear year, int round)
    {
        var match = (await year.Page.Locator("[data-track=matches] [data-item][aria-label*='Moarvik']").First.BoundingBoxAsync())!;
        await year.Page.Mouse.MoveAsync(match.X + match.Width / 2, match.Y + 6);
        await year.Page.Mouse.DownAsync();
        await year.AtAsync(round % 2 == 0 ? "#dates-d2027-11-07" : "#dates-d2027-11-06");
        return await year.MeasureAsync("pointerup", () => year.Page.Mouse.UpAsync());
    }

    private static async Task<JsonElement> Emphasis(MeasuredYear year, int round)
    {
        await year.AtAsync($"#emphasis-power-w{25 + round % 4}");
        await year.Page.Mouse.DownAsync();
        await year.Page.Mouse.UpAsync();
        return await year.MeasureAsync("keydown", () => year.Page.Keyboard.PressAsync($"{1 + round % 2}"));
    }

    private static Task<JsonElement> Undo(MeasuredYear year, int _) =>
        year.MeasureAsync("keydown", () => year.Page.Keyboard.PressAsync("Control+z"));

    private static Sample DiskAlone()
    {
        var sample = new Sample();
        var file = Path.GetTempFileName();
        using (var stream = new FileStream(file, FileMode.Append))
        {
            for (var i = 0; i < 200; i++)
            {
                var start = Stopwatch.GetTimestamp();
                stream.Write(new byte[1024]);
                stream.Flush(flushToDisk: true);
                sample.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            }
        }
        File.Delete(file);
        return sample;
    }

    private static async Task<JsonElement> KeyAsync(MeasuredYear year, string measure)
    {
        await year.Page.EvaluateAsync($"() => {{ window.measured = {measure}; }}");
        await year.Page.Keyboard.PressAsync("F8");
        return (await year.Page.EvaluateAsync("() => window.measured"))!.Value;
    }
}
