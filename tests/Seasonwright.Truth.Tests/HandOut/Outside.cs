using System.Diagnostics;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>Programs that are not ours.</summary>
internal static class Outside
{
    /// <summary>What a program says on its output; that it fails is a failure here, with what it said of it.</summary>
    public static async Task<string> RunAsync(string program, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        start.Environment["PYTHONIOENCODING"] = "utf-8";
        // Days and decimals are read as this language has them.
        start.Environment["LC_ALL"] = "en_US.UTF-8";
        using var run = Process.Start(start)!;
        var told = run.StandardError.ReadToEndAsync();
        var output = await run.StandardOutput.ReadToEndAsync();
        await run.WaitForExitAsync();
        Assert.True(run.ExitCode == 0, $"{program} ended with {run.ExitCode}: {await told} {output}");
        return output;
    }
}
