using System.CommandLine;
using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Cli;

/// <summary>Estimates a one-repetition maximum by the published equations, with how far they lie apart.</summary>
internal static class OneRmCommand
{
    private const string All = "all";

    private static readonly Table<(RepMaxEquation Equation, double OneRepMax)> Table = new(
    [
        new("equation", row => row.Equation.Name),
        new("1rm kg", row => row.OneRepMax.ToString("0.00", CultureInfo.InvariantCulture), IsNumber: true),
        new("formula", row => row.Equation.Formula),
        new("published", row => string.Create(CultureInfo.InvariantCulture, $"{row.Equation.Author} {row.Equation.Year}")),
    ]);

    public static Command Make(Terminal terminal)
    {
        var load = Parameters.Weight("--load", "help.one-rm.load");
        var reps = Parameters.Whole("--reps", "help.one-rm.reps", "arguments.reps", RepMaxEquation.Most);
        reps.Required = true;
        var equation = Equation();
        var format = Parameters.Word("--format", "help.show.format", OneRmFormat.Table);
        var command = new Command("one-rm", Texts.Say("help.one-rm")) { load, reps, equation, format };
        command.SetAction(call => (int)Run(call.GetValue(load), call.GetValue(reps)!.Value, call.GetValue(equation) ?? All, call.GetValue(format) ?? OneRmFormat.Table, terminal));
        return command;
    }

    private static Exit Run(decimal load, int reps, string name, OneRmFormat format, Terminal terminal)
    {
        if (!Weight.IsPossible(load, MassUnit.Kilogram))
        {
            terminal.Complain("arguments.heavy", "--load", load, Weight.Most);
            return Exit.BadInput;
        }
        var kilograms = (double)load;
        (RepMaxEquation Equation, double OneRepMax)[] rows = [.. (RepMaxEquation.Find(name) is { } one ? [one] : RepMaxEquation.All).Select(equation => (equation, equation.OneRepMax(kilograms, reps)))];
        if (format == OneRmFormat.Json)
            terminal.Out.Write(Json.Of(rows.ToDictionary(row => row.Equation.Name, row => row.OneRepMax, StringComparer.Ordinal)));
        else
        {
            Table.Write(rows, terminal.Out);
            terminal.Out.WriteLine();
            if (reps == 1) terminal.Tell("one-rm.single");
            else if (rows.Length > 1 && RepMaxSpread.Of(kilograms, reps) is var spread) terminal.Tell("one-rm.spread", spread.Least, spread.Median, spread.Greatest);
            terminal.Tell("one-rm.source");
            terminal.Tell("one-rm.caution");
        }
        if (reps > RepMaxEquation.Dependable) terminal.Complain("one-rm.many", reps, RepMaxEquation.Dependable);
        return Exit.Done;
    }

    private static Option<string?> Equation()
    {
        var names = string.Join(", ", RepMaxEquation.All.Select(equation => equation.Name).Append(All));
        var equation = new Option<string?>("--equation") { Description = Texts.Say("help.one-rm.equation", names), HelpName = "NAME" };
        equation.Validators.Add(result =>
        {
            var name = result.Tokens is [var token] ? token.Value : All;
            if (!string.Equals(name, All, StringComparison.OrdinalIgnoreCase) && RepMaxEquation.Find(name) is null) result.AddError(Texts.Say("arguments.word", equation.Name, name, names));
        });
        return equation;
    }

    private enum OneRmFormat
    {
        Table,
        Json,
    }
}
