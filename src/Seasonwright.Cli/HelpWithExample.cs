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
        var name = string.Join('.', Path(parseResult.CommandResult.Command).Skip(1).DefaultIfEmpty("root"));
        var writer = parseResult.InvocationConfiguration.Output;
        writer.WriteLine(Texts.Say("help.example"));
        foreach (var line in Texts.Say($"example.{name}").Split('\n')) writer.WriteLine($"  {line}");
        return (int)Exit.Done;
    }

    private static IEnumerable<string> Path(Command command) =>
        (command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? Path(parent) : []).Append(command.Name);
}
