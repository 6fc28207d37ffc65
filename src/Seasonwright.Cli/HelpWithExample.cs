using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Seasonwright.Cli;

/// <summary>The help of a command, and one call of it as it is typed.</summary>
internal sealed class HelpWithExample(HelpAction help) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        help.Invoke(parseResult);
        var command = parseResult.CommandResult.Command;
        var writer = parseResult.InvocationConfiguration.Output;
        writer.WriteLine(Texts.Say("help.example"));
        foreach (var line in Texts.Say(command.Subcommands.Count > 0 ? "example.root" : $"example.{command.Name}").Split('\n')) writer.WriteLine($"  {line}");
        return (int)Exit.Done;
    }
}
