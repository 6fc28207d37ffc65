using System.CommandLine;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Demo;

namespace Seasonwright.Cli;

/// <summary>Writes the invented demo season into a file.</summary>
internal static class DemoCommand
{
    public static Command Make(Terminal terminal)
    {
        var anchor = Parameters.Day("--anchor", "help.demo.anchor");
        var file = Parameters.Out();
        var command = new Command("demo", Texts.Say("help.demo")) { anchor, file };
        command.SetAction(call => (int)Run(call.GetValue(anchor), call.GetRequiredValue(file), terminal));
        return command;
    }

    private static Exit Run(DateOnly anchor, string file, Terminal terminal)
    {
        var demo = DemoSeason.Make(anchor);
        var season = Season.Empty(demo.Id);
        var setup = Setup.Empty(new TeamId(new NaturalIds(demo.Id).Of("team", DemoSeason.TeamName)));
        foreach (var edit in demo.Edits.Concat<Edit>(demo.Setup))
            if (Edits.Do(ref season, ref setup, edit, terminal) is null) return Exit.Refused;
        if (!SeasonFiles.Save(file, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("start.done", DemoSeason.TeamName, season.Weeks.Length, season.Days!.Value.First, season.Days.Value.Last, file);
        return Exit.Done;
    }
}
