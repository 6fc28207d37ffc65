using System.CommandLine;
using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Proposing;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>Repairs a plan from a day on with the least change, after matches were moved or called off or weeks were lost.</summary>
internal static class ReplanCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.Season();
        var from = Parameters.Day("--as-of", "help.replan.as-of");
        var moves = Parameters.Several("--move-match", "help.replan.move", "ID=DATE");
        var cancels = Parameters.Several("--cancel-match", "help.replan.cancel", "ID");
        var lost = Parameters.Several("--lose-week", "help.replan.lose", "N");
        var target = Parameters.Out();
        var command = new Command("replan", Texts.Say("help.replan")) { file, from, moves, cancels, lost, target };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(from), call.GetValue(moves) ?? [], call.GetValue(cancels) ?? [], call.GetValue(lost) ?? [], call.GetRequiredValue(target), terminal));
        return command;
    }

    private static Exit Run(string file, DateOnly from, string[] moves, string[] cancels, string[] lost, string target, Terminal terminal)
    {
        if (SeasonFiles.OpenStarted(file, terminal) is not var (season, setup)) return Exit.BadInput;
        if (season.Days is { } days && !days.Contains(from))
        {
            terminal.Complain("replan.outside", from, days.First, days.Last);
            return Exit.BadInput;
        }
        var stands = season;
        var ids = new NaturalIds(season.Id);
        List<SeasonEdit> happened = [];
        foreach (var move in moves)
            if (Moved(season, move, terminal) is { } edit) happened.Add(edit);
            else return Exit.BadInput;
        // A match that moves and is called off is called off on its new day.
        if (!Edits.DoAll(ref season, ref setup, happened, terminal)) return Exit.Refused;
        happened.Clear();
        foreach (var cancel in cancels)
            if (CalledOff(season, cancel, terminal) is { } edit) happened.Add(edit);
            else return Exit.BadInput;
        foreach (var week in lost)
            if (Lost(season, week, ids, terminal) is { } edit) happened.Add(edit);
            else return Exit.BadInput;
        if (!Edits.DoAll(ref season, ref setup, happened, terminal)) return Exit.Refused;

        // What stands is what was planned before anything happened.
        var wishes = Wishes.Of(stands).Repairing(stands, season, from);
        var repaired = Proposals.Of(season, setup, wishes, 1, (kind, key) => ids.Of(kind, key))[0];
        if (repaired.Clash is not null)
        {
            foreach (var sentence in repaired.ClashInWords) terminal.Error.WriteLine(sentence);
            terminal.Complain("nothing-written");
            return Exit.Refused;
        }
        var now = season;
        if (!Edits.DoAll(ref season, ref setup, repaired.Edits, terminal)) return Exit.Refused;
        if (!SeasonFiles.Save(target, season, setup, terminal)) return Exit.BadInput;
        var changes = RepairChanges.Of(stands, now, season, setup, Proposals.Unavoidable(now, setup, repaired));
        foreach (var (cause, lines) in changes)
        {
            terminal.Out.WriteLine(Texts.Say($"replan.cause.{cause}"));
            foreach (var line in lines) terminal.Out.WriteLine($"  {line}");
        }
        terminal.Tell(changes.Count == 0 ? "replan.same" : "replan.done", target, from);
        return Exit.Done;
    }

    /// <summary>"m12=2027-11-20". Of another kick-off nothing is said.</summary>
    private static MoveMatch? Moved(Season season, string text, Terminal terminal)
    {
        if (text.Split('=') is [{ Length: > 0 } match, var day] && DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var to) && IdText.IsId(match))
            return new MoveMatch(new MatchId(match), to, KickOff: season.Match(new MatchId(match))?.KickOff);
        terminal.Complain("replan.move", text);
        return null;
    }

    private static SetMatch? CalledOff(Season season, string text, Terminal terminal)
    {
        if (season.AllMatches.FirstOrDefault(match => match.Id.Text == text) is { } match) return new SetMatch(match.CalledOff());
        terminal.Complain("replan.no-match", text);
        return null;
    }

    private static SetEvent? Lost(Season season, string text, NaturalIds ids, Terminal terminal)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= season.Weeks.Length)
            return new SetEvent(new Event(new EventId(ids.Of("lost-week", season.Weeks[number - 1].Id.Text)), EventKind.Other, Texts.Say("replan.lost"), season.Weeks[number - 1].Days, Training: new Percent(0)));
        terminal.Complain("replan.no-week", text, season.Weeks.Length);
        return null;
    }
}
