using System.CommandLine;
using Seasonwright.Solver;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>Gives the sessions of several teams their places in one room.</summary>
internal static class RoomCommand
{
    public static Command Make(Terminal terminal)
    {
        var (file, target) = (Parameters.File("FILE", "help.room.file"), Parameters.Out());
        var format = Parameters.Word("--format", "help.propose.format", RoomFormat.Text);
        var command = new Command("room", Texts.Say("help.room")) { file, target, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetRequiredValue(target), call.GetValue(format) ?? RoomFormat.Text, terminal));
        return command;
    }

    private static Exit Run(string file, string target, RoomFormat format, Terminal terminal)
    {
        if (InputFile.Read(file, terminal) is not { } bytes) return Exit.BadInput;
        if (RoomFile.Read(bytes, out var problem) is not { } week)
        {
            terminal.Complain(file, problem!);
            return Exit.BadInput;
        }
        var proposal = RoomProposals.Of(week);
        if (!OutputFile.Write(target, RoomFile.Write(proposal.Week), terminal)) return Exit.BadInput;
        var report = RoomReport.Of(proposal);
        if (format == RoomFormat.Json)
        {
            terminal.Out.Write(Json.Of(report));
            return Exit.Done;
        }
        report.Write(week.Room, terminal);
        terminal.Tell("room.done", report.Placed, report.Asked, report.Cost, report.Proof(), target);
        return Exit.Done;
    }

    private enum RoomFormat
    {
        Text,
        Json,
    }
}
