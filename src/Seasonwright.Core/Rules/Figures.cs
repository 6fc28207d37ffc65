using System.Globalization;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>The figures of one rule as they are in force for one team: its own where it has set them, else the rule's.</summary>
public readonly record struct Figures(string Rule, Setup Setup)
{
    /// <summary>As text. A value that the figure cannot hold, from a newer version for instance, counts for nothing.</summary>
    public string Text(Figure figure) =>
        Setup.RuleParameter(new RuleParameter(Rule, figure.Name)) is { } set && figure.Canonical(set) is { } own ? own : figure.Default;

    public decimal Number(Figure figure) => decimal.Parse(Text(figure), CultureInfo.InvariantCulture);

    public ValueList<decimal> Numbers(Figure figure) => Text(figure).Split(' ').Select(part => decimal.Parse(part, CultureInfo.InvariantCulture)).ToValueList();

    public bool IsYes(Figure figure) => Text(figure) == "yes";

    public bool Holds(Figure figure, string word) => Text(figure).Split(", ").Contains(word, StringComparer.Ordinal);

    /// <summary>The limits of a governing body that were chosen and dated, whatever the date; null while none are.</summary>
    public string? Preset(Figure preset) => Preset(preset, DateOnly.MaxValue);

    /// <summary>The limits of a governing body that hold on a day; null where none do.</summary>
    public string? Preset(Figure preset, DateOnly on) => Text(preset) is var chosen && chosen != preset.Default
        && DateOnly.TryParseExact(Text(Figure.PresetDate), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var since) && since <= on ? chosen : null;
}
