using System.Globalization;
using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Reads masses as people write them: "71,5", "63.2 kg", "141 lb", "15st 2lb". A comma or point is the decimal sign; nobody weighs thousands.</summary>
internal static partial class MassText
{
    /// <summary>Kilograms that a player's body may have: from a small child to the heaviest athletes. Common practice, no source.</summary>
    public static bool IsPossible(EnteredMass mass) => mass.Kilograms is >= 20 and <= 250;

    /// <summary>The figures and the unit written with them; null where the whole text is no mass.</summary>
    public static (decimal Amount, decimal Pounds, MassUnit? Unit)? Read(string text)
    {
        if (Stones().Match(text) is { Success: true } stone) return (Number(stone, "n"), stone.Groups["lb"].Success ? Number(stone, "lb") : 0, MassUnit.Stone);
        return Plain().Match(text) is { Success: true } plain && Number(plain, "n") > 0 ? (Number(plain, "n"), 0, UnitOf(plain.Groups["unit"].Value)) : null;
    }

    /// <summary>The unit a word is ("kg", "lbs"); null for any other.</summary>
    public static MassUnit? UnitOf(string word) => word.TrimEnd('.').ToUpperInvariant() switch
    {
        "KG" or "KGS" or "KILO" or "KILOS" or "KILOGRAM" or "KILOGRAMS" or "KILOGRAMM" => MassUnit.Kilogram,
        "LB" or "LBS" or "POUND" or "POUNDS" or "PFUND" => MassUnit.Pound,
        "ST" or "STONE" or "STONES" => MassUnit.Stone,
        _ => null,
    };

    /// <summary>The units named in a text ("weights in lb", "1RM (kg)"), each once.</summary>
    public static List<MassUnit> UnitsIn(string text) => [.. Units().Matches(text).Select(match => UnitOf(match.Value)).OfType<MassUnit>().Distinct()];

    private static decimal Number(Match match, string group) => decimal.Parse(match.Groups[group].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?:ca\.?|about|approx\.?|~|≈)? ?(?<n>[0-9]{1,4}(?:[.,][0-9]{1,3})?) ?(?<unit>kgs?|kilos?|kilograms?|kilogramm|lbs?|pounds?)?\.?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Plain();

    [GeneratedRegex(@"^(?<n>[0-9]{1,2})(?: ?(?:st|stones?)\.? ?(?<lb>1[0-3](?:[.,][0-9])?|[0-9](?:[.,][0-9])?)?(?: ?(?:lbs?|pounds?))?)\.?$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Stones();

    [GeneratedRegex(@"(?<![a-z])(?:kgs?|kilos?|kilograms?|kilogramm|lbs?|pounds)(?![a-z])", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Units();
}
