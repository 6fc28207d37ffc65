using System.CommandLine;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>Proposes a year: phases, blocks, kinds, loads, emphasis and test days around the calendar of a season file.</summary>
internal static class ProposeCommand
{
    private const int MostAlternatives = 4;

    public static Command Make(Terminal terminal, TimeProvider clock)
    {
        var file = Parameters.Season();
        var alternatives = Parameters.Count("--alternatives", "help.propose.alternatives", MostAlternatives);
        var target = Parameters.Out();
        var format = Parameters.Word("--format", "help.propose.format", ProposeFormat.Text);
        var command = new Command("propose", Texts.Say("help.propose")) { file, alternatives, target, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), call.GetValue(alternatives) ?? 0, call.GetRequiredValue(target), call.GetValue(format) ?? ProposeFormat.Text, terminal, clock));
        return command;
    }

    private static Exit Run(string file, int alternatives, string target, ProposeFormat format, Terminal terminal, TimeProvider clock)
    {
        if (SeasonFiles.OpenStarted(file, terminal) is not var (season, setup)) return Exit.BadInput;
        var began = clock.GetTimestamp();
        var ids = new NaturalIds(season.Id);
        var proposals = Proposals.Of(season, setup, Wishes.Of(season), alternatives + 1, (kind, key) => ids.Of(kind, key));
        var seconds = clock.GetElapsedTime(began).TotalSeconds;
        var best = proposals[0];
        if (best.Clash is not null)
        {
            if (format == ProposeFormat.Json) terminal.Out.Write(Json.Of(ProposeReport.Of(best, seconds)));
            else foreach (var sentence in best.ClashInWords) terminal.Error.WriteLine(sentence);
            if (format == ProposeFormat.Text) foreach (var sentence in best.ByFacts) terminal.Error.WriteLine(sentence);
            terminal.Complain("nothing-written");
            return Exit.Refused;
        }
        List<Season> all = [];
        for (var i = 0; i < proposals.Count; i++)
        {
            var (planned, same) = (season, setup);
            if (!Edits.DoAll(ref planned, ref same, proposals[i].Edits, terminal)) return Exit.Refused;
            if (!SeasonFiles.Save(PathOf(target, i), planned, setup, terminal)) return Exit.BadInput;
            all.Add(planned);
        }
        Tell(all[0]);
        return Exit.Done;

        void Tell(Season planned)
        {
            if (format == ProposeFormat.Json)
            {
                terminal.Out.Write(Json.Of(ProposeReport.Of(best, seconds)));
                return;
            }
            foreach (var sentence in best.ByFacts) terminal.Out.WriteLine(sentence);
            ProposedWeek.Table.Write(ProposedWeek.Of(planned, setup, best), terminal.Out);
            var findings = Rulebook.Check(planned, setup).Findings;
            terminal.Tell("propose.done", season.Weeks.Length, best.Loads.Gap.ToString("0.0 %", CultureInfo.InvariantCulture), target, findings.Count(finding => !finding.IsForced), findings.Count(finding => finding.IsForced));
            if (proposals.Count > 1) terminal.Tell("propose.others", string.Join(", ", Enumerable.Range(1, proposals.Count - 1).Select(other => PathOf(target, other))));
        }
    }

    /// <summary>"plan.json", "plan.2.json", "plan.3.json".</summary>
    private static string PathOf(string target, int index) =>
        index == 0 ? target : Path.Combine(Path.GetDirectoryName(target) ?? "", string.Create(CultureInfo.InvariantCulture, $"{Path.GetFileNameWithoutExtension(target)}.{index + 1}{Path.GetExtension(target)}"));

    private enum ProposeFormat
    {
        Text,
        Json,
    }
}
