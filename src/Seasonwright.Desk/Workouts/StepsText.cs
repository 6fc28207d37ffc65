using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;

namespace Seasonwright.Desk.Workouts;

/// <summary>Weights in even steps as they are typed in one field: "2-30 by 2 kg", or one weight alone: "16 kg".</summary>
public static partial class StepsText
{
    /// <param name="unit">Where none is typed.</param>
    /// <returns>Null where the text tells no weights.</returns>
    public static WeightSteps? Read(string text, MassUnit unit)
    {
        if (Form().Match(text.Trim().ToLowerInvariant().Replace(',', '.')) is not { Success: true } match) return null;
        var (from, told) = (Number(match, "from"), match.Groups["unit"].Value switch { "lb" => MassUnit.Pound, "kg" => MassUnit.Kilogram, _ => unit });
        return match.Groups["to"].Success ? new(from, Number(match, "to"), Number(match, "step"), told) : new(from, from, from, told);
    }

    /// <summary>As it would be typed: what <see cref="Read"/> reads as the same; empty for none.</summary>
    public static string Of(WeightSteps? steps, LocaleSettings locale) => steps is null ? ""
        : steps.From == steps.To && steps.Step == steps.From ? $"{WorkWords.Number(steps.From, locale)} {Unit(steps)}"
        : $"{WorkWords.Number(steps.From, locale)}-{WorkWords.Number(steps.To, locale)} by {WorkWords.Number(steps.Step, locale)} {Unit(steps)}";

    private static string Unit(WeightSteps steps) => steps.Unit == MassUnit.Pound ? "lb" : "kg";

    private static decimal Number(Match match, string group) => decimal.Parse(match.Groups[group].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<from>\d{1,3}(\.\d{1,3})?)( ?(-|–|to) ?(?<to>\d{1,3}(\.\d{1,3})?) ?(by|in|/) ?(?<step>\d{1,3}(\.\d{1,3})?))? ?(?<unit>kg|lb)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Form();
}
