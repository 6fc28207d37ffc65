using System.CommandLine;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Cli;

/// <summary>Loads for shares of a maximum as a bar and its plates make them, with the plates of each side.</summary>
internal static class LoadsCommand
{
    private const int MostPairs = 50;

    public static Command Make(Terminal terminal)
    {
        var (oneRm, bar) = (Parameters.Weight("--one-rm", "help.loads.one-rm"), Parameters.Weight("--bar", "help.loads.bar"));
        var percents = Parameters.Numbers("--percent", "help.loads.percent", "P[,P]", Intensity.IsPossible, "arguments.percents", Intensity.Most);
        var plates = Parameters.Numbers("--plates", "help.loads.plates", "LIST", PlatePair.IsPossible, "arguments.plates", PlatePair.MostMass);
        var pairs = Parameters.Whole("--pairs", "help.loads.pairs", "arguments.whole", MostPairs);
        var unit = Parameters.Word("--unit", "help.loads.unit", UnitWord.Kg);
        var round = Parameters.Word("--round", "help.loads.round", LoadRounding.Nearest);
        var format = Parameters.Word("--format", "help.show.format", LoadsFormat.Table);
        var command = new Command("loads", Texts.Say("help.loads")) { oneRm, percents, bar, plates, pairs, unit, round, format };
        command.SetAction(call => (int)Run(
            call.GetValue(oneRm), call.GetRequiredValue(percents), call.GetValue(bar), call.GetRequiredValue(plates), call.GetValue(pairs),
            call.GetValue(unit) == UnitWord.Lb ? MassUnit.Pound : MassUnit.Kilogram, call.GetValue(round) ?? LoadRounding.Nearest, call.GetValue(format) ?? LoadsFormat.Table, terminal));
        return command;
    }

    private static Exit Run(
        decimal oneRm, IReadOnlyList<decimal> percents, decimal bar, IReadOnlyList<decimal> plates, int? pairs, MassUnit unit, LoadRounding rounding, LoadsFormat format, Terminal terminal)
    {
        foreach (var (name, weight) in new[] { ("--one-rm", oneRm), ("--bar", bar) })
        {
            if (Weight.IsPossible(weight, unit)) continue;
            terminal.Complain("arguments.heavy", name, weight, Math.Floor(new Weight(Weight.Most).In(unit)));
            return Exit.BadInput;
        }
        if (plates.Distinct().Count() > PlateSet.MostMasses)
        {
            terminal.Complain("loads.masses", PlateSet.MostMasses);
            return Exit.BadInput;
        }
        var totals = LoadableTotals.Of(new Bar(new Weight(bar, unit)), new PlateSet(unit, plates.Select(mass => new PlatePair(mass, pairs))));
        IReadOnlyList<LoadLine> lines = [.. percents.Select(percent => LoadLine.Of(new Intensity(percent), oneRm, totals, rounding))];
        if (format == LoadsFormat.Json) terminal.Out.Write(Json.Of(lines));
        else LoadLine.Table.Write(lines, terminal.Out);
        foreach (var line in lines)
        {
            if (line.Loadable is null) terminal.Complain("loads.light", line.Percent, line.Target, totals.Empty);
            else if (line.Target > totals.Heaviest) terminal.Complain("loads.heavy", line.Percent, line.Target, totals.Heaviest);
        }
        if (percents.Any(percent => percent > 100)) terminal.Complain("loads.above");
        return lines.All(line => line.Loadable is null) ? Exit.Refused : Exit.Done;
    }

    private enum UnitWord
    {
        Kg,
        Lb,
    }

    private enum LoadsFormat
    {
        Table,
        Json,
    }
}
