using System.CommandLine;

namespace Seasonwright.Cli;

/// <summary>Shows a week of a season file: a row a day, and the week against its target.</summary>
internal static class WeekShowCommand
{
    public static Command Make(Terminal terminal)
    {
        var (file, week) = (Parameters.Season(), WeekCommand.Number());
        var format = Parameters.Word("--format", "help.show.format", WeekFormat.Table);
        var command = new Command("show", Texts.Say("help.week.show")) { file, week, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(week)!.Value, call.GetValue(format) ?? WeekFormat.Table, terminal));
        return command;
    }

    private static Exit Run(string file, int number, WeekFormat format, Terminal terminal)
    {
        if (SeasonFiles.OpenStarted(file, terminal) is not var (season, setup)) return Exit.BadInput;
        if (WeekCommand.Find(season, number, terminal) is not { } week) return Exit.BadInput;
        var report = WeekReport.Of(season, setup, week);
        if (format == WeekFormat.Json) terminal.Out.Write(Json.Of(report));
        else report.Write(terminal);
        return Exit.Done;
    }

    private enum WeekFormat
    {
        Table,
        Json,
    }
}
