using System.CommandLine;
using Seasonwright.Core.Rules;
using Seasonwright.Documents.Rules;

namespace Seasonwright.Cli;

/// <summary>Shows the rulebook.</summary>
internal static class RulesCommand
{
    public static Command Make(Terminal terminal)
    {
        var format = Parameters.Word("--format", "help.rules.format", RulesFormat.Table);
        var command = new Command("rules", Texts.Say("help.rules")) { format };
        command.SetAction(call => (int)Run(call.GetValue(format) ?? RulesFormat.Table, terminal));
        return command;
    }

    private static Exit Run(RulesFormat format, Terminal terminal)
    {
        switch (format)
        {
            case RulesFormat.Json: terminal.Out.Write(Json.Of(Rulebook.All.Select(RuleLine.Of))); break;
            case RulesFormat.Md: terminal.Out.Write(RulesPaper.Write()); break;
            default: RuleLine.Table.Write([.. Rulebook.All.Select(RuleLine.Of)], terminal.Out); break;
        }
        return Exit.Done;
    }

    private enum RulesFormat
    {
        Table,
        Json,
        Md,
    }
}
