using Seasonwright.Core;
using Seasonwright.Documents.Read.Squads;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A person of a squad list as <c>squad</c> gives them. What the list does not say is null or empty.</summary>
/// <param name="Mass">As entered, with its unit.</param>
/// <param name="Waits">Nothing is kept of the row until its question is answered.</param>
/// <param name="Ask">Ids of its open questions.</param>
internal sealed record SquadLine(
    int Line, string? Number, string Family, string Given, IReadOnlyList<string> Positions, DateOnly? Born, int? Age, string? Mass, string? Height,
    IReadOnlyList<SquadLiftLine> Lifts, string? Group, string? Remark, bool Waits, IReadOnlyList<string> Ask)
{
    public static Table<SquadLine> Csv { get; } = new(
    [
        new("line", line => CellText.Number(line.Line)),
        new("number", line => line.Number),
        new("family", line => line.Family),
        new("given", line => line.Given),
        new("positions", line => string.Join('/', line.Positions)),
        new("born", line => Day(line.Born)),
        new("age", line => CellText.Number(line.Age)),
        new("mass", line => line.Mass),
        new("height", line => line.Height),
        new("lifts", line => string.Join("; ", line.Lifts.Select(lift => lift.Text))),
        new("group", line => line.Group),
        new("remark", line => line.Remark),
        new("waits", line => line.Waits ? "yes" : "no"),
        new("ask", line => string.Join(' ', line.Ask)),
    ]);

    /// <summary>For people: what a coach looks for.</summary>
    public static Table<SquadLine> Table { get; } = new(
    [
        new("line", line => CellText.Number(line.Line), IsNumber: true),
        new("no", line => line.Number, IsNumber: true),
        new("name", line => line.Family.Length > 0 && line.Given.Length > 0 ? $"{line.Family}, {line.Given}" : line.Family + line.Given),
        new("position", line => string.Join('/', line.Positions)),
        new("born", line => line.Born is null && line.Age is { } age ? $"({CellText.Number(age)})" : Day(line.Born)),
        new("mass", line => line.Mass),
        new("height", line => line.Height),
        new("lifts", line => string.Join("; ", line.Lifts.Select(lift => lift.Text))),
        new("group", line => line.Group),
        new("remark", line => line.Remark),
        new("ask", line => string.Join(' ', line.Ask)),
    ]);

    public static SquadLine Of(SquadRow row) => new(
        row.Line, row.Number, row.Family, row.Given, row.Positions, row.Born, row.Age, row.Mass?.ToString(), row.Height, [.. row.Lifts.Select(SquadLiftLine.Of)], row.Group, row.Remark, row.Waits, row.Ask);
}

/// <summary>A lift of a person as entered.</summary>
/// <param name="Unit">"kg", "lb" or "st".</param>
/// <param name="IsMax">Whether a figure without repetitions is a one-repetition maximum; null while nobody has said.</param>
/// <param name="Text">All of it in words.</param>
internal sealed record SquadLiftLine(string Exercise, string CalledAs, decimal Weight, string Unit, int? Reps, bool? IsMax, string Text)
{
    public static SquadLiftLine Of(SquadLift lift) => new(lift.Exercise, lift.CalledAs, lift.Weight.Amount, lift.Weight.Unit.Word(), lift.Reps, lift.IsMax, lift.ToString());
}
