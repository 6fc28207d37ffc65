using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Seasonwright.Cli;

/// <summary>The door for scripts: reads the arguments, runs one command, answers with its exit code.</summary>
internal static class CommandLine
{
    private const int HelpWidth = 100;

    public static int Run(IReadOnlyList<string> args, Terminal terminal, TimeProvider clock)
    {
        try
        {
            var exit = Answer(args, terminal, clock);
            terminal.Out.Flush();
            terminal.Error.Flush();
            return (int)exit;
        }
        catch (IOException error)
        {
            // The reader of our output went away or its disk is full; the files named in the arguments have their own sentences.
            terminal.Complain("out.stream", error.Message);
            terminal.Error.Flush();
            return (int)Exit.BadInput;
        }
    }

    private static Exit Answer(IReadOnlyList<string> args, Terminal terminal, TimeProvider clock)
    {
        // A name that begins with @ is a name, not a file of arguments.
        var parsed = Root(terminal, clock).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction or null)
        {
            // "A command is missing" is no news beside a word that is none.
            foreach (var error in parsed.Errors.Skip(parsed.UnmatchedTokens.Count > 0 && parsed.CommandResult.Command.Subcommands.Count > 0 ? 1 : 0))
                terminal.Error.WriteLine(error.Message);
            terminal.Complain("arguments.help", string.Join(' ', Path(parsed.CommandResult.Command)));
            return Exit.BadInput;
        }
        return (Exit)parsed.Invoke(new InvocationConfiguration { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false });
    }

    private static Command Root(Terminal terminal, TimeProvider clock) =>
        // Not the library's own root, which takes its name from whatever process it runs in.
        new("seasonwright", Texts.Say("help.root"))
        {
            new HelpOption { Action = new HelpWithExample(new HelpAction { MaxWidth = HelpWidth }) },
            new VersionOption(),
            StartCommand.Make(terminal),
            FixturesCommand.Make(terminal),
            EventsCommand.Make(terminal),
            SquadCommand.Make(terminal, clock),
            ImportCommand.Make(terminal),
            ShowCommand.Make(terminal),
            ProposeCommand.Make(terminal, clock),
            ReplanCommand.Make(terminal),
            WeekCommand.Make(terminal, clock),
            RoomCommand.Make(terminal),
            CheckCommand.Make(terminal),
            RulesCommand.Make(terminal),
            OneRmCommand.Make(terminal),
            LoadsCommand.Make(terminal),
            VelocityCommand.Make(terminal),
            ApplyCommand.Make(terminal, clock),
            RedateCommand.Make(terminal),
            HandOutCommand.Make(terminal, clock),
            CardsCommand.Make(terminal, clock),
            HomeCommand.Make(terminal, clock),
            DemoCommand.Make(terminal),
            BackupCommand.Make(terminal),
            RestoreCommand.Make(terminal, clock),
        };

    private static IEnumerable<string> Path(Command command) =>
        (command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? Path(parent) : []).Append(command.Name);
}
