using System.Diagnostics;

namespace Seasonwright.Cli.Tests;

/// <summary>The built program as a shell runs it.</summary>
public class ProcessTests
{
    [Fact]
    public void Results_go_to_one_stream_and_complaints_to_the_other()
    {
        using var session = new Session();
        var (exit, output, error) = Run(session, "start", "--from", "2027-07-05", "--weeks", "10", "--team", "Harbour Vale – Größe", "--out", "s.json");
        Assert.Equal((0, ""), (exit, error));
        Assert.Equal("Harbour Vale – Größe: 10 weeks from Mon 5 Jul 2027 to Sun 12 Sep 2027, written to s.json.\n", output);

        (exit, output, error) = Run(session, "show", "missing.json");
        Assert.Equal((2, ""), (exit, output));
        Assert.Equal("missing.json: there is no such file. Check the name and the folder. Nothing was written.\n", error);

        (exit, output, error) = Run(session);
        Assert.Equal((2, ""), (exit, output));
        Assert.Contains("seasonwright --help", error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_arguments_give_the_same_bytes_whatever_the_locale()
    {
        using var session = new Session();
        Run(session, "start", "--from", "2027-07-05", "--weeks", "52", "--team", "Harbour Vale", "--out", "one.json");
        Run(session, "start", "--from", "2027-07-05", "--weeks", "52", "--team", "Harbour Vale", "--out", "two.json", "LANG=tr_TR.UTF-8");
        Assert.Equal(File.ReadAllBytes(session["one.json"]), File.ReadAllBytes(session["two.json"]));
        Assert.Equal(Run(session, "show", "one.json", "LANG=ar_SA.UTF-8"), Run(session, "show", "two.json"));
    }

    private static (int Exit, string Output, string Error) Run(Session session, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet") { WorkingDirectory = session.Folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "seasonwright.dll"));
        foreach (var argument in arguments)
        {
            if (argument.StartsWith("LANG=", StringComparison.Ordinal)) start.Environment["LANG"] = start.Environment["LC_ALL"] = argument["LANG=".Length..];
            else start.ArgumentList.Add(argument);
        }
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
