using Microsoft.Playwright;

namespace Seasonwright.Browser.Tests;

/// <summary>The system's Chromium without a window, as tests and measurements start it.</summary>
public static class Chromium
{
    public static Task<IBrowser> LaunchAsync(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = Found(),
        Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync"],
    });

    private static string Found() => Environment.GetEnvironmentVariable("CHROMIUM") is { Length: > 0 } named ? named
        : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, "chromium")).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("Chromium is not on the PATH and CHROMIUM does not name it. ./test --install installs it.");
}
