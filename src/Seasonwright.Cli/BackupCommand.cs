using System.CommandLine;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Copies a data folder into one file, also while the workspace is running.</summary>
internal static class BackupCommand
{
    public static Command Make(Terminal terminal)
    {
        var data = Parameters.Data();
        var file = Parameters.Out("help.backup.out");
        var command = new Command("backup", Texts.Say("help.backup")) { data, file };
        command.SetAction(call => (int)Run(call.GetValue(data), call.GetRequiredValue(file), terminal));
        return command;
    }

    private static Exit Run(string? data, string file, Terminal terminal)
    {
        var copied = DataCopy.BackUp(data, file);
        if (copied.Trouble is { } trouble)
        {
            terminal.Error.WriteLine(trouble);
            return copied.InUse ? Exit.Refused : Exit.BadInput;
        }
        terminal.Tell("backup.done", copied.Folder, file);
        return Exit.Done;
    }
}
