using System.CommandLine;

namespace Seasonwright.Cli;

/// <summary>Shows a season file: a row a week, or a row a match.</summary>
internal static class ShowCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.Season();
        var matches = new Option<bool>("--matches") { Description = Texts.Say("help.show.matches") };
        var format = Parameters.Word("--format", "help.show.format", ShowFormat.Table);
        var command = new Command("show", Texts.Say("help.show")) { file, matches, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(matches), call.GetValue(format) ?? ShowFormat.Table, terminal));
        return command;
    }

    private static Exit Run(string file, bool matches, ShowFormat format, Terminal terminal)
    {
        if (SeasonFiles.Open(file, terminal) is not var (season, _)) return Exit.BadInput;
        if (matches) Write(MatchRow.Of(season), MatchRow.Table);
        else Write(WeekRow.Of(season), WeekRow.Table);
        return Exit.Done;

        void Write<T>(IReadOnlyList<T> rows, Table<T> table)
        {
            if (format == ShowFormat.Json) terminal.Out.Write(Json.Of(rows));
            else table.Write(rows, terminal.Out);
        }
    }

    private enum ShowFormat
    {
        Table,
        Json,
    }
}
