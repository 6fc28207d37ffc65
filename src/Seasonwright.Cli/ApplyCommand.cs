using System.CommandLine;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Wire;

namespace Seasonwright.Cli;

/// <summary>Makes a list of edits on a season file: all of them or none.</summary>
internal static class ApplyCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var file = Parameters.Season();
        var edits = Parameters.File("EDITS.jsonl", "help.apply.edits");
        var target = Parameters.Out();
        var command = new Command("apply", Texts.Say("help.apply")) { file, edits, target };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetRequiredValue(edits), call.GetRequiredValue(target), terminal, clock));
        return command;
    }

    private static Exit Run(string file, string list, string target, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.Open(file, terminal) is not var (season, setup, edition)) return Exit.BadInput;
        if (InputFile.Read(list, terminal) is not { } bytes || TextLines.Of(bytes, list, terminal) is not { } lines) return Exit.BadInput;

        var done = new List<string>();
        foreach (var (text, number) in lines.Select((text, index) => (text, index + 1)))
        {
            var edit = EditLines.Read(text, season, out var problem);
            if (problem is not null)
            {
                terminal.Complain(list, problem with { Line = number });
                terminal.Complain("nothing-written");
                return Exit.BadInput;
            }
            if (edit is null) continue;
            if (Edits.Do(ref season, ref setup, edit, terminal, Texts.Say("apply.refused", list, number)) is not { } words) return Exit.Refused;
            done.Add(Texts.Say("apply.line", number, words));
            // What was published is a version until something is changed again.
            edition = edit is Publish ? new Edition(season.LastPublication, DateOnly.FromDateTime(clock.GetLocalNow().DateTime)) : null;
        }

        if (!SeasonFiles.Save(target, season, setup, terminal, edition)) return Exit.BadInput;
        foreach (var line in done) terminal.Out.WriteLine(line);
        terminal.Tell(done.Count == 1 ? "apply.done.one" : "apply.done", done.Count, target);
        return Exit.Done;
    }
}
