using System.CommandLine;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Cli;

/// <summary>Makes a season of a coach's own year workbook, or prints how it would be read.</summary>
internal static class ImportCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.File("FILE", "help.import.file");
        var propose = new Option<bool>("--propose-map") { Description = Texts.Say("help.import.propose") };
        var map = Parameters.Path("--map", "help.import.map", "MAP.json");
        var team = new Option<string?>("--team") { Description = Texts.Say("help.import.team"), HelpName = "NAME" };
        var target = Parameters.Path("--out", "help.out", "FILE");
        var command = new Command("import", Texts.Say("help.import")) { file, propose, map, team, target };
        command.Validators.Add(result =>
        {
            if (result.GetValue(propose) == (result.GetResult(target) is not null)) result.AddError(Texts.Say("import.one-of"));
        });
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(map), call.GetValue(team), call.GetValue(target), terminal));
        return command;
    }

    private static Exit Run(string file, string? mapFile, string? team, string? target, Terminal terminal)
    {
        if (InputFile.Read(file, terminal) is not { } bytes || OpenMap(mapFile, terminal) is not { } map) return Exit.BadInput;
        var read = SheetReader.OrElsewhere(SheetReader.Read(Workbook.Read(Path.GetFileName(file), bytes), map), bytes);
        var unknown = map.Roles.Keys.Where(key => read.Grid is not null && read.Rows.All(row => row.Key != key)).ToList();
        if (unknown.Count > 0)
        {
            foreach (var key in unknown) terminal.Complain("import.no-row", key, read.Name);
            terminal.Complain("nothing-written");
            return Exit.BadInput;
        }
        if (target is null && read.Problems.Count == 0) terminal.Out.Write(SheetMapFile.Propose(read));
        var exit = ListFiles.Tell(read.Name, read.Questions, read.Problems, read.IsBlocked, map.Answers, terminal, "import.questions");
        TellRest(read, terminal);
        if (target is null || exit != Exit.Done)
        {
            if (target is not null) terminal.Complain("nothing-written");
            return exit;
        }
        if ((team ?? read.Team) is not { } name)
        {
            terminal.Complain("import.no-team", read.Name);
            return Exit.BadInput;
        }
        return Write(read, name, target, terminal);
    }

    private static Exit Write(SheetReading read, string team, string target, Terminal terminal)
    {
        var grid = read.Grid!.Value;
        var id = NaturalIds.Season(team, grid.FirstDay);
        var ids = new NaturalIds(id);
        var weeks = Enumerable.Range(1, grid.Count).Select(ids.Week).ToValueList();
        var (season, setup) = (Season.Empty(id), Setup.Empty(new TeamId(ids.Of("team", team))));
        var start = new StartSeason(grid.FirstDay, grid.WeekStart, weeks, new TeamCard(team, SeasonTitle.Of(grid.Span)));
        var edits = new SheetImport(read, weeks, setup.ReferenceWeek, (kind, key) => ids.Of(kind, key)).Edits();
        foreach (var edit in new Edit[] { start, new SetTeamName(team), new SetLocale(new LocaleSettings(WeekStart: grid.WeekStart)) }.Concat(edits))
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return Exit.Refused;
        if (!SeasonFiles.Save(target, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("start.done", team, grid.Count, grid.Span.First, grid.Span.Last, target);
        terminal.Tell("import.done", season.AllMatches.Length, season.AllEvents.Count(), season.Phases.Length, season.Blocks.Length, season.AllTestDays.Count(), season.Tracks.Count());
        return Exit.Done;
    }

    /// <summary>Everything that is no row: what is held back by its cell only, and what was left out, alike things together.</summary>
    private static void TellRest(SheetReading read, Terminal terminal)
    {
        foreach (var held in read.HeldBack) terminal.Complain(held.IsRemark ? "import.held-note" : "import.held", held.Sheet, held.Cell);
        foreach (var match in read.Rows.SelectMany(row => row.Matches).Where(match => !match.IsWritten)) terminal.Complain("import.waits", match.Sheet, match.Cell, OneLine.Of(match.Text));
        foreach (var row in read.Rows.Where(row => row.Role is RowRole.Leave)) terminal.Complain("import.leave", row.Key, OneLine.Of(row.Label));
        foreach (var left in read.LeftOut) terminal.Complain(left.Kind == "hidden-read" ? "import.hidden" : left.Text.Length > 0 ? "import.left" : "import.left.place", left.Sheet, left.Where.Length > 0 ? left.Where : left.Sheet, left.Why, OneLine.Of(left.Text));
    }

    /// <returns>An empty map where none is given; null after saying what is wrong with the file.</returns>
    private static SheetMap? OpenMap(string? path, Terminal terminal)
    {
        if (path is null) return SheetMap.Empty;
        if (InputFile.Read(path, terminal) is not { } bytes) return null;
        var (map, problems) = SheetMapFile.Read(SourceText.OfBytes(Path.GetFileName(path), bytes));
        foreach (var problem in problems) terminal.Complain(problem);
        return problems.Count > 0 ? null : map;
    }
}
