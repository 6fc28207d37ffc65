using System.CommandLine;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Cli;

/// <summary>Reads a squad list and gives its people, what it leaves open, and where something of health was held back. Writes no file.</summary>
internal static class SquadCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var file = Parameters.File("FILE", "help.squad.file");
        var answers = Parameters.Answers();
        var format = Parameters.Word("--format", "help.list.format", ListFormat.Table);
        var command = new Command("squad", Texts.Say("help.squad")) { file, answers, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(answers), call.GetValue(format) ?? ListFormat.Table, terminal, clock));
        return command;
    }

    private static Exit Run(string file, string? answersFile, ListFormat format, Terminal terminal, TimeProvider clock)
    {
        if (ListFiles.OpenBytes(file, terminal) is not { } bytes || ListFiles.OpenAnswers(answersFile, terminal) is not { } answers) return Exit.BadInput;
        var list = SquadReader.Read(Path.GetFileName(file), bytes, new SquadOptions(DateOnly.FromDateTime(clock.GetLocalNow().DateTime), answers));
        var exit = ListFiles.Give(SquadReport.Of(list), format, SquadLine.Csv, SquadLine.Table, isBlocked: false, answers, terminal);
        if (list.HeldBack.Count > 0 && format != ListFormat.Json) terminal.Complain("squad.held", string.Join(", ", list.HeldBack.Select(held => held.Where)));
        return exit;
    }
}
