using System.CommandLine;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;

namespace Seasonwright.Cli;

/// <summary>Gives a season another first day.</summary>
internal static class RedateCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.Season();
        var from = Parameters.Day("--from", "help.redate.from");
        var plan = Parameters.Word("--plan", "help.redate.plan", RedatePlan.Moves);
        var target = Parameters.Out();
        var command = new Command("redate", Texts.Say("help.redate")) { file, from, plan, target };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(from), call.GetValue(plan) ?? RedatePlan.Moves, call.GetRequiredValue(target), terminal));
        return command;
    }

    private static Exit Run(string file, DateOnly from, RedatePlan plan, string target, Terminal terminal)
    {
        if (SeasonFiles.Open(file, terminal) is not var (season, setup)) return Exit.BadInput;
        var redate = new Redate(from, season.Frame.WeekStart, plan, NewWeeks(season, from));
        if (Edits.Do(ref season, ref setup, redate, terminal) is not { } words) return Exit.Refused;
        if (!SeasonFiles.Save(target, season, setup, terminal)) return Exit.BadInput;
        terminal.Tell("redate.done", words, season.Days!.Value.First, season.Days.Value.Last, target);
        if (season.Outside.Count > 0) terminal.Tell(season.Outside.Count == 1 ? "outside.one" : "outside", season.Outside.Count);
        return Exit.Done;
    }

    /// <summary>As many new weeks as can be needed: one for every week between the two first days.</summary>
    private static ValueList<WeekId> NewWeeks(Season season, DateOnly from)
    {
        var frame = season.Frame;
        var known = frame.Before.Concat(frame.Weeks).Concat(frame.After).ToHashSet();
        var most = Math.Abs(from.DayNumber - frame.FirstDay.DayNumber) / 7 + 2;
        var ids = new NaturalIds(season.Id);
        return Enumerable.Range(1, known.Count + most).Select(ids.Week).Where(week => !known.Contains(week)).Take(most).ToValueList();
    }
}
