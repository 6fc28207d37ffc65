using System.CommandLine;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Cli;

/// <summary>Checks a season file against the rulebook.</summary>
internal static class CheckCommand
{
    public static Command Make(Terminal terminal)
    {
        var file = Parameters.Season();
        var format = Parameters.Word("--format", "help.check.format", CheckFormat.Table);
        var command = new Command("check", Texts.Say("help.check")) { file, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(format) ?? CheckFormat.Table, terminal));
        return command;
    }

    private static Exit Run(string file, CheckFormat format, Terminal terminal)
    {
        if (SeasonFiles.Open(file, terminal) is not var (season, setup)) return Exit.BadInput;
        var checkup = Rulebook.Check(season, setup);
        IReadOnlyList<FindingLine> lines = [.. checkup.Findings.Select(FindingLine.Of)];
        if (format == CheckFormat.Json) terminal.Out.Write(Json.Of(lines));
        else
        {
            FindingLine.Table.Write(lines, terminal.Out);
            terminal.Tell("check.done", checkup.Findings.Count, checkup.Accepted.Count,
                Count(RuleState.Checked), Count(RuleState.NothingToCheck), Count(RuleState.TooLittle), Count(RuleState.Waits), Count(RuleState.Off));
        }
        return checkup.Findings.Any(finding => !finding.IsForced && finding.Severity > Severity.Caution) ? Exit.Refused : Exit.Done;

        int Count(RuleState state) => checkup.Answers.Count(answer => answer.State == state);
    }

    private enum CheckFormat
    {
        Table,
        Json,
    }
}
