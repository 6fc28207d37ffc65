using System.Globalization;
using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Reads a lift's figures as entered: "85x5", "140 x 3", "200 lb x5", "52,5", "5 x 80 kg", "1RM 100".</summary>
/// <param name="Amount">Weight.</param>
/// <param name="Unit">As written with it; null without one.</param>
/// <param name="Reps">Null for a bare figure.</param>
/// <param name="IsMax">The cell itself calls it a one-repetition maximum.</param>
internal sealed partial record LiftText(decimal Amount, MassUnit? Unit, int? Reps, bool IsMax)
{
    private const int MostSetReps = 12, LightestBar = 20;

    /// <summary>Null where the whole text is no lift.</summary>
    public static LiftText? Read(string text)
    {
        var isMax = Max().IsMatch(text);
        var plain = isMax ? Max().Replace(text, " ").Trim(' ', ':', '(', ')') : text;
        if (Form().Match(plain) is not { Success: true } match) return null;
        var (weight, reps) = (Number(match.Groups["n"].Value), match.Groups["reps"].Success ? Number(match.Groups["reps"].Value) : (decimal?)null);
        var unit = MassText.UnitOf(match.Groups["unit"].Value) ?? MassText.UnitOf(match.Groups["behind"].Value);
        // "5 x 80 kg": five repetitions of it. Few go with a weight that no bar is as light as.
        if (reps is { } turned && weight <= MostSetReps && decimal.IsInteger(weight) && turned >= LightestBar && !match.Groups["unit"].Success) (weight, reps) = (turned, weight);
        if (weight <= 0 || reps is { } count && (!decimal.IsInteger(count) || count is < 1 or > 100)) return null;
        return new(weight, unit, (int?)reps, isMax && reps is null);
    }

    private static decimal Number(string figures) => decimal.Parse(figures.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<n>[0-9]{1,3}(?:[.,][0-9]{1,2})?) ?(?<unit>kgs?|kilos?|lbs?|pounds)?\.?(?: ?(?:[x×*@]|for|reps?:) ?(?<reps>[0-9]{1,3}(?:[.,][0-9]{1,2})?) ?(?:reps?|wdh\.?|wh\.?)? ?(?<behind>kgs?|kilos?|lbs?|pounds)?\.?)?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Form();

    [GeneratedRegex(@"(?<![\p{L}0-9])(?:1 ?rm|pr|pb|max\.?)(?!\p{L})", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Max();
}
