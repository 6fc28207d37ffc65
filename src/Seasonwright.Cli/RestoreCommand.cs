using System.CommandLine;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Puts a backup in a data folder's place.</summary>
internal static class RestoreCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var file = Parameters.File("FILE", "help.restore.file");
        var data = Parameters.Data();
        var command = new Command("restore", Texts.Say("help.restore")) { file, data };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(data), terminal, clock));
        return command;
    }

    private static Exit Run(string file, string? data, Terminal terminal, TimeProvider clock)
    {
        var restored = DataCopy.Restore(file, data, clock);
        if (restored.Trouble is { } trouble)
        {
            terminal.Error.WriteLine(trouble);
            return restored.InUse ? Exit.Refused : Exit.BadInput;
        }
        terminal.Tell("restore.done", restored.Folder, file);
        if (restored.Kept is { } kept) terminal.Tell("restore.kept", kept);
        return Exit.Done;
    }
}
