using System.Diagnostics;

namespace Seasonwright.Cli.Tests;

/// <summary>The built program as a shell runs it, in the folder of a session.</summary>
internal static class BuiltProgram
{
    public static readonly string File = Path.Combine(AppContext.BaseDirectory, "seasonwright.dll");

    public static (int Exit, string Output, string Error) Run(Session session, params string[] arguments) => RunUnder(session, [], arguments);

    /// <param name="locale">Of the process, as tr_TR.UTF-8.</param>
    public static (int Exit, string Output, string Error) RunIn(Session session, string locale, params string[] arguments) =>
        RunUnder(session, ["env", $"LANG={locale}", $"LC_ALL={locale}"], arguments);

    /// <param name="wrapper">A command that runs the program, for instance a tracer with its options.</param>
    public static (int Exit, string Output, string Error) RunUnder(Session session, string[] wrapper, params string[] arguments)
    {
        string[] line = [.. wrapper, "dotnet", File, .. arguments];
        var start = new ProcessStartInfo(line[0], line[1..]) { WorkingDirectory = session.Folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
