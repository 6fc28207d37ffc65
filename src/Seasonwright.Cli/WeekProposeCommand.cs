using System.CommandLine;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>Lays out a week of a season file: sessions of ours around its matches and practices.</summary>
internal static class WeekProposeCommand
{
    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var (file, week, target, squad, answers) = (Parameters.Season(), WeekCommand.Number(), Parameters.Out(), GivenSquad.Option(), Parameters.Answers());
        var format = Parameters.Word("--format", "help.propose.format", WeekFormat.Text);
        var command = new Command("propose", Texts.Say("help.week.propose")) { file, week, target, squad, answers, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(week)!.Value, call.GetRequiredValue(target), new GivenSquad(call.GetValue(squad), call.GetValue(answers)), call.GetValue(format) ?? WeekFormat.Text, terminal, clock));
        return command;
    }

    private static Exit Run(string file, int number, string target, GivenSquad squad, WeekFormat format, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.OpenStarted(file, terminal) is not var (season, setup)) return Exit.BadInput;
        if (WeekCommand.Find(season, number, terminal) is not { } week) return Exit.BadInput;
        var (players, exit) = squad.Read(season, setup, terminal, clock);
        if (exit != Exit.Done)
        {
            terminal.Complain("nothing-written");
            return exit;
        }
        var (began, ids) = (clock.GetTimestamp(), new NaturalIds(season.Id));
        var proposal = WeekProposals.Of(WeekProblem.Of(season, setup, week, week.Days.First));
        if (proposal.Problem.Stop is not null)
        {
            foreach (var reason in proposal.Short) terminal.Error.WriteLine(reason.Sentence);
            terminal.Complain("nothing-written");
            return Exit.Refused;
        }
        var planned = season;
        if (!Edits.DoAll(ref planned, ref setup, WeekEdits.Of(season, setup, proposal, (kind, key) => ids.Of(kind, key)), terminal)) return Exit.Refused;
        if (!SeasonFiles.Save(target, planned, setup, terminal)) return Exit.BadInput;
        var report = WeekReport.Of(planned, setup, week, players, proposal, clock.GetElapsedTime(began).TotalSeconds);
        if (format == WeekFormat.Json)
        {
            terminal.Out.Write(Json.Of(report));
            return Exit.Done;
        }
        report.Write(terminal);
        foreach (var (session, reasons) in proposal.Sessions.Zip(proposal.Reasons))
            terminal.Tell("week.why", proposal.Problem.Days[session.Day].Date, Sentences.Say($"session.{session.Kind}"), string.Join(" ", reasons.Select(Sentence)));
        foreach (var reason in proposal.Short) terminal.Out.WriteLine(Sentence(reason));
        report.Squad?.Write(terminal);
        terminal.Tell("week.done", proposal.Sessions.Count, number, proposal.Gap.ToString("0.0 %", CultureInfo.InvariantCulture), target);
        return Exit.Done;
    }

    /// <summary>A sentence with the rule it rests on.</summary>
    private static string Sentence(WeekReason reason) => $"{reason.Sentence.TrimEnd('.')}{(reason.Rule.Length > 0 ? $" ({reason.Rule})" : "")}.";

    private enum WeekFormat
    {
        Text,
        Json,
    }
}
