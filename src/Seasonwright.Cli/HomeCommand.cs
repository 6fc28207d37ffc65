using System.CommandLine;
using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Home;

namespace Seasonwright.Cli;

/// <summary>Writes a home programme for a squad: every player's weeks, what is done on each day, and a letter to the guardian of who is under 18.</summary>
internal static class HomeCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var (file, squad, answers) = (Parameters.Season(), GivenSquad.Option(), Parameters.Answers());
        var programme = Parameters.Path("--programme", "help.home.programme", "NAME");
        var (paper, target) = (Parameters.Word("--paper", "help.home.paper", Paper.A4), Parameters.Out("help.home.out"));
        squad.Required = true;
        var command = new Command("home", Texts.Say("help.home")) { file, squad, answers, programme, paper, target };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), new GivenSquad(call.GetValue(squad), call.GetValue(answers)), call.GetValue(programme),
            call.GetValue(paper) == Paper.Letter ? PaperSize.Letter : PaperSize.A4, call.GetRequiredValue(target), terminal, clock));
        return command;
    }

    private static Exit Run(string file, GivenSquad squad, string? name, PaperSize paper, string target, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.Open(file, terminal) is not { } content) return Exit.BadInput;
        var shared = new SharedSeason(content.Season, content.Setup, content.Edition ?? Edition.Draft(DateOnly.FromDateTime(clock.GetLocalNow().DateTime)));
        if (Find(shared.Season, name, terminal) is not { } programme) return Exit.BadInput;
        var (players, exit) = squad.Read(shared.Season, shared.Setup, terminal, clock);
        if (exit != Exit.Done) return exit;
        var home = SquadHome.Of(shared, programme, players!, ImmutableDictionary<PersonId, string>.Empty);
        if (home.Sheets.Count == 0)
        {
            terminal.Complain("home.nobody", home.Title);
            return Exit.BadInput;
        }
        if (!OutputFile.Write(target, HandOuts.Home(home, paper).Bytes, terminal)) return Exit.BadInput;
        terminal.Tell(home.Sheets.Count == 1 ? "home.made-one" : "home.made", home.Sheets.Count, home.Title, home.When, home.Sheets.Count(sheet => sheet.IsMinor), shared.EditionWords);
        if (home.LeftOut.Count > 0) terminal.Tell("home.left-out", string.Join(", ", home.LeftOut));
        terminal.Tell("home.list-only");
        return Exit.Done;
    }

    /// <summary>By its name or id, or the only one; null after saying which there are.</summary>
    private static HomeProgramme? Find(Season season, string? name, Terminal terminal)
    {
        List<HomeProgramme> all = [.. season.HomeProgrammes];
        if (name is null && all is [var only]) return only;
        if (all.FirstOrDefault(one => string.Equals(one.Name, name?.Trim(), StringComparison.OrdinalIgnoreCase) || one.Id.Text == name) is { } found) return found;
        terminal.Complain(all.Count == 0 ? "home.none" : name is null ? "home.which" : "home.unknown", name, string.Join(", ", all.Select(one => $"\"{one.Name}\"")));
        return null;
    }

    private enum Paper
    {
        A4,
        Letter,
    }
}
