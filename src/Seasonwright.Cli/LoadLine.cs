using System.Text.Json.Serialization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;

namespace Seasonwright.Cli;

/// <summary>A share of a maximum as <c>loads</c> gives it, all in one unit.</summary>
/// <param name="Loadable">Null where the bar alone is heavier.</param>
internal sealed record LoadLine(decimal Percent, decimal Target, decimal? Loadable, [property: JsonPropertyName("perSide")] ValueList<decimal> PerSide)
{
    public static Table<LoadLine> Table { get; } = new(
    [
        new("percent", line => CellText.Number(line.Percent), IsNumber: true),
        new("target", line => CellText.Number(line.Target), IsNumber: true),
        new("loadable", line => CellText.Number(line.Loadable) ?? "-", IsNumber: true),
        new("per side", line => line.Loadable is null ? "" : line.PerSide.Count == 0 ? Texts.Say("loads.bar-alone") : string.Join(" + ", line.PerSide.Select(mass => CellText.Number(mass)))),
    ]);

    public static LoadLine Of(Intensity intensity, decimal oneRm, LoadableTotals totals, LoadRounding rounding)
    {
        // 99.00 and 99 are one figure.
        var target = intensity.Of(oneRm) / 1.000000000000000000m;
        var loading = totals.Load(target, rounding);
        return new(intensity.Percent, target, loading?.Total / 1.000000000000000000m, loading?.PerSide ?? []);
    }
}
