using System.CommandLine;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Cli;

/// <summary>Reads a fixture list and gives its matches, what it leaves open, and what it changes. Writes no file.</summary>
internal static class FixturesCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.File("FILE", "help.fixtures.file");
        var team = new Option<string>("--team") { Description = Texts.Say("help.fixtures.team"), HelpName = "NAME", Required = true };
        var answers = Parameters.Answers();
        var update = Parameters.Path("--update", "help.fixtures.update", "FILE");
        var format = Parameters.Word("--format", "help.list.format", ListFormat.Table);
        var command = new Command("fixtures", Texts.Say("help.fixtures")) { file, team, answers, update, format };
        command.SetAction(call => (int)Run(
            call.GetRequiredValue(file), call.GetRequiredValue(team), call.GetValue(answers), call.GetValue(update), call.GetValue(format) ?? ListFormat.Table, terminal));
        return command;
    }

    private static Exit Run(string file, string team, string? answersFile, string? update, ListFormat format, Terminal terminal)
    {
        if (ListFiles.Open(file, terminal) is not { } source || ListFiles.OpenAnswers(answersFile, terminal) is not { } answers) return Exit.BadInput;
        var (known, exit) = update is null ? (null, Exit.Done)
            : KnownSeason.Open(update, (earlier, ids) => TakenList.Fixtures(earlier, new FixtureOptions(team, answers), ids), answers, terminal);
        if (exit != Exit.Done) return exit;

        var list = FixtureReader.Read(source, new FixtureOptions(team, answers, known?.Days, UsualOrder: known?.Order));
        var compared = known is null ? null : FixtureUpdate.Compare(known.Season.AllMatches, list, answers);
        var notes = (compared ?? FixtureUpdate.Compare([], list, answers)).Notes;
        foreach (var note in notes) terminal.Complain("list.note", list.Name, note);
        return ListFiles.Give(FixtureReport.Of(list, compared, notes), format, FixtureLine.Csv, FixtureLine.Table(compared is not null), list.IsBlocked, answers, terminal);
    }
}
