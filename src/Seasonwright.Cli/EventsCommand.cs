using System.CommandLine;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Cli;

/// <summary>Reads a list of breaks and other dates and gives its events and test days, what it leaves open, and what it changes. Writes no file.</summary>
internal static class EventsCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.File("FILE", "help.events.file");
        var answers = Parameters.Answers();
        var season = Parameters.Path("--season", "help.events.season", "FILE");
        var update = Parameters.Path("--update", "help.events.update", "FILE");
        var format = Parameters.Word("--format", "help.list.format", ListFormat.Table);
        var command = new Command("events", Texts.Say("help.events")) { file, answers, season, update, format };
        command.SetAction(call => (int)Run(
            call.GetRequiredValue(file), call.GetValue(answers), call.GetValue(season), call.GetValue(update), call.GetValue(format) ?? ListFormat.Table, terminal));
        return command;
    }

    private static Exit Run(string file, string? answersFile, string? seasonFile, string? update, ListFormat format, Terminal terminal)
    {
        if (ListFiles.Open(file, terminal) is not { } source || ListFiles.OpenAnswers(answersFile, terminal) is not { } answers) return Exit.BadInput;
        var (season, exit) = seasonFile is null ? (null, Exit.Done) : KnownSeason.Open(seasonFile, terminal);
        if (exit != Exit.Done) return exit;
        var reading = new EventReading(answers, season?.Days, UsualOrder: season?.Order);
        (var known, exit) = update is null ? (null, Exit.Done)
            : KnownSeason.Open(update, (earlier, ids) => TakenList.Events(earlier, reading, ids), answers, terminal);
        if (exit != Exit.Done) return exit;

        var list = EventReader.Read(source, reading with { Season = reading.Season ?? known?.Days, UsualOrder = reading.UsualOrder ?? known?.Order });
        var compared = known is null ? null : EventUpdate.Compare(known.Season.AllEvents, known.Season.AllTestDays, list, answers);
        return ListFiles.Give(EventReport.Of(list, compared), format, EventLine.Csv, EventLine.Table(compared is not null), list.IsBlocked, answers, terminal);
    }
}
