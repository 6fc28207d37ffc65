namespace Seasonwright.Cli.Tests;

/// <summary>What only a process of its own shows: its streams, its exit code, its locale.</summary>
public class ProcessTests
{
    [Fact]
    public void Results_go_to_one_stream_and_complaints_to_the_other()
    {
        using var session = new Session();
        var (exit, output, error) = BuiltProgram.Run(session, "start", "--from", "2027-07-05", "--weeks", "10", "--team", "Harbour Vale – Größe", "--out", "s.json");
        Assert.Equal((0, ""), (exit, error));
        Assert.Equal("Harbour Vale – Größe: 10 weeks from Mon 5 Jul 2027 to Sun 12 Sep 2027, written to s.json.\n", output);

        (exit, output, error) = BuiltProgram.Run(session, "show", "missing.json");
        Assert.Equal((2, ""), (exit, output));
        Assert.Equal("missing.json: there is no such file. Check the name and the folder. Nothing was written.\n", error);

        (exit, output, error) = BuiltProgram.Run(session);
        Assert.Equal((2, ""), (exit, output));
        Assert.Contains("seasonwright --help", error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_arguments_give_the_same_bytes_whatever_the_locale()
    {
        using var session = new Session();
        string[] start = ["start", "--from", "2027-07-05", "--weeks", "52", "--team", "Harbour Vale", "--fixtures", "short.csv", "--events", "short-breaks.csv", "--out"];
        BuiltProgram.Run(session, [.. start, "one.json"]);
        BuiltProgram.RunIn(session, "tr_TR.UTF-8", [.. start, "two.json"]);
        Assert.Equal(File.ReadAllBytes(session["one.json"]), File.ReadAllBytes(session["two.json"]));
        Assert.Equal(BuiltProgram.RunIn(session, "ar_SA.UTF-8", "show", "one.json"), BuiltProgram.Run(session, "show", "two.json"));
        Assert.Equal(BuiltProgram.RunIn(session, "ar_SA.UTF-8", "fixtures", "short.csv", "--team", "Harbour Vale"), BuiltProgram.Run(session, "fixtures", "short.csv", "--team", "Harbour Vale"));
        Assert.Equal(BuiltProgram.RunIn(session, "ar_SA.UTF-8", "events", "short-breaks.csv"), BuiltProgram.Run(session, "events", "short-breaks.csv"));
    }

    [Fact]
    public void Every_command_has_a_help_with_an_example()
    {
        using var session = new Session();
        var (_, help, _) = BuiltProgram.Run(session, "--help");
        var commands = help.Split("Commands:")[1].Split("Example:")[0].Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line.Length > 2 && char.IsAsciiLetter(line[2])).Select(line => line.Trim().Split(' ')[0]).ToList();
        Assert.True(commands.Count >= 11, string.Join(' ', commands));
        Assert.All(commands, command =>
        {
            var (exit, told, error) = BuiltProgram.Run(session, command, "--help");
            Assert.Equal((0, ""), (exit, error));
            Assert.Contains($"seasonwright {command} ", told, StringComparison.Ordinal);
        });
    }
}
