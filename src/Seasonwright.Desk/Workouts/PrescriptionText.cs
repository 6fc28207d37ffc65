using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;
using Seasonwright.Documents;

namespace Seasonwright.Desk.Workouts;

/// <summary>
/// A prescription as it is typed in one field: sets x length, then how hard. "4x5 80%", "3x8 r2", "3x30s", "2x20m", "3x10 20kg", "4x3 0.5 m/s -20%", "3x6 rpe 8", "2x8 50% bm",
/// "4x5 80% 3-1-X-0"; a decimal comma is a decimal sign. A number alone says nothing: it may be
/// meant as per cent or as a weight; nor does a range, of which a card can name neither end.
/// </summary>
public static partial class PrescriptionText
{
    /// <returns>Null where the text is no prescription.</returns>
    public static Prescription? Read(string text)
    {
        var plain = DecimalComma().Replace(text.Trim().ToLowerInvariant().Replace('×', 'x'), ".");
        if (Length().Match(plain) is not { Success: true } length || !Number(length.Groups["sets"].Value, out var sets) || !Number(length.Groups["amount"].Value, out var amount)) return null;
        var rest = plain[length.Length..];
        Tempo? tempo = null;
        if (TempoForm().Match(rest) is { Success: true } told)
        {
            if (Tempo.Parse(told.Groups["tempo"].Value) is not { } read) return null;
            (tempo, rest) = (read, rest.Remove(told.Index, told.Length));
        }
        var counted = length.Groups["unit"].Value switch { "s" or "sec" => WorkUnit.Seconds, "min" => WorkUnit.Seconds, "m" => WorkUnit.Metres, _ => WorkUnit.Repetitions };
        if (length.Groups["unit"].Value == "min") amount *= 60;
        return amount is >= 1 && amount <= Prescription.MostOf(counted) && sets is >= 1 and <= Prescription.MostSets && EffortOf(rest.Trim(' ', '.', '@', ';', ',')) is { } effort
            ? new Prescription((int)sets, (int)amount, counted, effort, tempo) : null;
    }

    /// <summary>As it would be typed: what <see cref="Read"/> reads as the same.</summary>
    public static string Of(Prescription prescription, LocaleSettings locale)
    {
        var unit = prescription.Unit switch { WorkUnit.Seconds => "s", WorkUnit.Metres => "m", _ => "" };
        var effort = prescription.Effort switch
        {
            { Kind: EffortKind.OfMax, Amount: { } percent } => $"{WorkWords.Number(percent, locale)}%",
            { Kind: EffortKind.Reserve, Amount: { } reserve } => $"r{WorkWords.Number(reserve, locale)}",
            { Kind: EffortKind.Velocity, Amount: { } velocity, StopLoss: { } loss } => FormattableString.Invariant($"{WorkWords.Number(velocity, locale)} m/s -{loss.Value}%"),
            { Kind: EffortKind.Velocity, Amount: { } velocity } => $"{WorkWords.Number(velocity, locale)} m/s",
            { Kind: EffortKind.OfBodyMass, Amount: { } percent } => $"{WorkWords.Number(percent, locale)}% bm",
            { Kind: EffortKind.Fixed, Weight: { } weight } => $"{WorkWords.Number(weight.Amount, locale)} {(weight.Unit == MassUnit.Pound ? "lb" : "kg")}",
            _ => "",
        };
        var words = new[] { FormattableString.Invariant($"{prescription.Sets}x{prescription.Amount}{unit}"), effort, prescription.Tempo?.ToString() ?? "" };
        return string.Join(' ', words.Where(word => word.Length > 0));
    }

    private static Effort? EffortOf(string text)
    {
        if (text.Length == 0) return Effort.Free;
        if (Form().Match(text) is not { Success: true } match || !Number(match.Groups["number"].Value, out var number)) return null;
        return match.Groups["before"].Value switch
        {
            "r" or "rir" or "leave" => Within(new(EffortKind.Reserve, number)),
            "rpe" => number is >= 0 and <= 10 && decimal.IsInteger(number * 2) && ReserveScale.Of(new Rpe(number)) is { } range ? Effort.Reserve(range.Least) : null,
            _ => match.Groups["after"].Value switch
            {
                "%" => Within(new(EffortKind.OfMax, number)),
                "% bm" or "%bm" => Within(new(EffortKind.OfBodyMass, number)),
                "m/s" => match.Groups["loss"] is { Success: true } loss
                    ? Number(loss.Value, out var percent) && percent is >= Effort.LeastStopLoss and <= Effort.MostStopLoss && decimal.IsInteger(percent) ? Within(new(EffortKind.Velocity, number, null, new Percent((int)percent))) : null
                    : Within(new(EffortKind.Velocity, number)),
                "in reserve" or "rir" or "left" => Within(new(EffortKind.Reserve, number)),
                "kg" or "lb" or "lbs" => Weight.IsPossible(number, match.Groups["after"].Value == "kg" ? MassUnit.Kilogram : MassUnit.Pound) ? new Effort(EffortKind.Fixed, null, new Weight(number, match.Groups["after"].Value == "kg" ? MassUnit.Kilogram : MassUnit.Pound)) : null,
                _ => null,
            },
        };

        static Effort? Within(Effort effort) => Effort.BoundsOf(effort.Kind) is { } bounds && effort.Amount >= bounds.Least && effort.Amount <= bounds.Most ? effort : null;
    }

    private static bool Number(string text, out decimal number) => decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    [GeneratedRegex(@"^(?<sets>\d{1,3}) ?x ?(?<amount>\d{1,6}) ?(?<unit>sec|s|min|m|reps?)?(?![a-z/0-9.])", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Length();

    [GeneratedRegex(@"(^|(?<= ))(tempo )?(?<tempo>\d{1,2}-\d{1,2}-(\d{1,2}|x)-\d{1,2})( |$)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex TempoForm();

    [GeneratedRegex(@"^((?<before>rir|rpe|r|leave) ?(?<number>\d{1,4}(\.\d{1,6})?)|(?<number>\d{1,4}(\.\d{1,6})?) ?((?<after>% ?bm|%|in reserve|rir|left|kg|lbs?)|(?<after>m/s)( ?(stop|-) ?(?<loss>\d{1,2}) ?%?)?))$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Form();

    [GeneratedRegex(@"(?<=\d),(?=\d)", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex DecimalComma();
}
