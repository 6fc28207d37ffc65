using System.Globalization;
using Microsoft.Playwright;
using Seasonwright.Bench.Browser;
using Seasonwright.Browser.Tests;

// repaint PROGRAM EDITS     from the hand to the frame, on the demo's year; a table
if (args is not [var proof, var program, var size] || !int.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var many))
{
    Console.Error.WriteLine("repaint PROGRAM EDITS");
    return 2;
}
using var playwright = await Playwright.CreateAsync();
await using var browser = await Chromium.LaunchAsync(playwright);
switch (proof)
{
    case "repaint": await RepaintProof.Run(browser, program, many); return 0;
    default: Console.Error.WriteLine($"No proof {proof}."); return 2;
}
