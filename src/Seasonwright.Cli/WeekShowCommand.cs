using System.CommandLine;

namespace Seasonwright.Cli;

/// <summary>Shows a week of a season file: a row a day, and the week against its target.</summary>
internal static class WeekShowCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var (file, week, squad, answers) = (Parameters.Season(), WeekCommand.Number(), GivenSquad.Option(), Parameters.Answers());
        var format = Parameters.Word("--format", "help.show.format", WeekFormat.Table);
        var command = new Command("show", Texts.Say("help.week.show")) { file, week, squad, answers, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(week)!.Value, new GivenSquad(call.GetValue(squad), call.GetValue(answers)), call.GetValue(format) ?? WeekFormat.Table, terminal, clock));
        return command;
    }

    private static Exit Run(string file, int number, GivenSquad squad, WeekFormat format, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.OpenStarted(file, terminal) is not var (season, setup)) return Exit.BadInput;
        if (WeekCommand.Find(season, number, terminal) is not { } week) return Exit.BadInput;
        var (players, exit) = squad.Read(season, setup, terminal, clock);
        if (exit != Exit.Done) return exit;
        var report = WeekReport.Of(season, setup, week, players);
        if (format == WeekFormat.Json) terminal.Out.Write(Json.Of(report));
        else
        {
            report.Write(terminal);
            report.Squad?.Write(terminal);
        }
        return Exit.Done;
    }

    private enum WeekFormat
    {
        Table,
        Json,
    }
}
