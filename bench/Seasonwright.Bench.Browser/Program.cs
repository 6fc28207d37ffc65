using System.Globalization;
using Microsoft.Playwright;
using Seasonwright.Bench.Browser;
using Seasonwright.Browser.Tests;

// repaint PROGRAM EDITS     from the hand to the frame, on the demo's year; a table
// redate PROGRAM REDATES    the same for the whole season redated
// start PROGRAM STARTS      from starting the program to its pages
// pages PROGRAM PAGES       memory of so many open pages, and an edit on its way to all
if (args is not [var proof, var program, var size] || !int.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var many))
{
    Console.Error.WriteLine("repaint PROGRAM EDITS | redate PROGRAM REDATES | start PROGRAM STARTS | pages PROGRAM PAGES");
    return 2;
}
using var playwright = await Playwright.CreateAsync();
await using var browser = await Chromium.LaunchAsync(playwright);
switch (proof)
{
    case "repaint": await RepaintProof.Run(browser, program, many); return 0;
    case "redate": await RedateProof.Run(browser, program, many); return 0;
    case "start": await StartProof.Run(browser, program, many); return 0;
    case "pages": await PagesProof.Run(browser, program, many); return 0;
    default: Console.Error.WriteLine($"No proof {proof}."); return 2;
}
