using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Match = System.Text.RegularExpressions.Match;

namespace Seasonwright.Desk.Workouts;

/// <summary>A run as it is typed in one field: "25min 70%", "6x300m 95% rest 90s", "8x60s 100% rest 1min +10%" (what every week adds, in per cent of the first).</summary>
public static partial class RunText
{
    /// <returns>Null where the text is no run, or none that can be.</returns>
    public static HomeRun? Read(string text)
    {
        if (Form().Match(text.Trim().ToLowerInvariant().Replace('×', 'x').Replace(',', '.')) is not { Success: true } match) return null;
        var amount = Number(match, "amount") * (match.Groups["unit"].Value switch { "min" => 60, "km" => 1_000, _ => 1 });
        var unit = match.Groups["unit"].Value is "m" or "km" ? WorkUnit.Metres : WorkUnit.Seconds;
        var rest = match.Groups["rest"].Success ? Number(match, "rest") * (match.Groups["pause"].Value == "min" ? 60 : 1) : 0;
        var (repetitions, speed, more) = (match.Groups["count"].Success ? Number(match, "count") : 1, Number(match, "speed"), match.Groups["more"].Success ? Number(match, "more") : 0);
        var (least, most) = unit == WorkUnit.Metres ? (HomeRun.LeastMetres, HomeRun.MostMetres) : (HomeRun.LeastSeconds, HomeRun.MostSeconds);
        var isPossible = Within(amount, least, most) && Within(repetitions, 1, HomeRun.MostRepetitions) && Within(speed, HomeRun.LeastSpeed, HomeRun.MostSpeed) && Within(rest, 0, HomeRun.MostRest) && Within(more, 0, HomeRun.MostMore);
        return isPossible ? new((int)repetitions, (int)amount, unit, new Percent((int)speed), (int)rest, (int)more) : null;
    }

    /// <summary>As it would be typed: what <see cref="Read"/> reads as the same; empty for none.</summary>
    public static string Of(HomeRun? run) => run is null ? "" : string.Join(' ', new[]
    {
        (run.IsSteady ? "" : FormattableString.Invariant($"{run.Repetitions}x")) + (run.Unit == WorkUnit.Metres ? FormattableString.Invariant($"{run.Amount}m") : Time(run.Amount)),
        FormattableString.Invariant($"{run.Speed.Value}%"),
        run.Rest > 0 ? $"rest {Time(run.Rest)}" : "",
        run.More > 0 ? FormattableString.Invariant($"+{run.More}%") : "",
    }.Where(word => word.Length > 0));

    private static string Time(int seconds) => seconds % 60 == 0 ? FormattableString.Invariant($"{seconds / 60}min") : FormattableString.Invariant($"{seconds}s");

    private static bool Within(decimal number, int least, int most) => decimal.IsInteger(number) && number >= least && number <= most;

    private static decimal Number(Match match, string group) => decimal.Parse(match.Groups[group].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^((?<count>\d{1,3}) ?x ?)?(?<amount>\d{1,5}(\.\d{1,3})?) ?(?<unit>sec|s|min|km|m) +@? ?(?<speed>\d{1,3}) ?%( +(rest|r) ?(?<rest>\d{1,4}(\.\d)?) ?(?<pause>sec|s|min))?( +\+ ?(?<more>\d{1,3}) ?%( a week)?)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Form();
}
