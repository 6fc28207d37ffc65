using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;

namespace Seasonwright.Desk.Squad;

/// <summary>Load done elsewhere as people type it: "90 x 6", "540", "Mon 90 x 6; Tue 60 x 4; Thu match 90 x 8; 0".</summary>
public static partial class OutsideText
{
    /// <summary>
    /// Parts are set apart by semicolons or lines. A part that begins with a day (its name, for each such day; "25 Oct"; the date) is of that
    /// day, one without of all others. RPE before minutes is taken where it cannot be the other way round.
    /// </summary>
    /// <param name="days">Of the absence; null while they are not known, and then every day's name may be.</param>
    /// <returns>Nothing known for an empty text; <see cref="OutsideLoads.Unknown"/> with the reason where it cannot be read, about the field "load".</returns>
    public static (OutsideLoads Loads, Refusal? Wrong) Read(string text, DaySpan? days)
    {
        var others = default(OutsideLoad);
        var apart = new SortedDictionary<DateOnly, OutsideLoad>();
        foreach (var part in text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var read = Part().Match(part);
            if (!read.Success || LoadOf(read.Groups["first"].Value, read.Groups["second"].Value) is not { } load) return Unread(part);
            if (read.Groups["day"].Value is not { Length: > 0 } day)
            {
                if (others is not null) return Unread(part);
                others = load;
                continue;
            }
            if (days is not { } span) continue;
            var named = span.Days().Where(one => IsNamed(one, day)).ToList();
            if (named.Count == 0) return No(Refusal.Say("outside-day", "load", day));
            foreach (var one in named)
                if (!apart.TryAdd(one, load)) return No(Refusal.Say("outside-twice", "load", one));
        }
        return (new(others, apart.Select(one => new OutsideDay(one.Key, one.Value)).ToValueList()), null);
    }

    private static (OutsideLoads Loads, Refusal? Wrong) No(Refusal why) => (OutsideLoads.Unknown, why);

    private static (OutsideLoads Loads, Refusal? Wrong) Unread(string part) => No(Refusal.Say("outside-unread", "load", part.Length > LongestQuoted ? part[..LongestQuoted] + "…" : part));

    private static OutsideLoad? LoadOf(string first, string second)
    {
        if (second.Length == 0) return Whole(first, Load.Most) is { } au ? OutsideLoad.Of(new Load(au)) : null;
        if (Whole(first, MostOfADay) is { } minutes && EffortOf(second) is { } effort) return OutsideLoad.Of(new Minutes(minutes), effort);
        return EffortOf(first) is { } before && Whole(second, MostOfADay) is { } after ? OutsideLoad.Of(new Minutes(after), before) : null;
    }

    private const int MostOfADay = 1440, LongestQuoted = 60;

    private static int? Whole(string text, int most) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= most ? number : null;

    private static Rpe? EffortOf(string text) =>
        decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var effort) && effort <= 10 && effort * 2 == decimal.Truncate(effort * 2) ? new Rpe(effort) : null;

    private static bool IsNamed(DateOnly day, string name) =>
        day.DayOfWeek.ToString().StartsWith(name, StringComparison.OrdinalIgnoreCase)
        || DayFormats.Any(format => string.Equals(day.ToString(format, CultureInfo.InvariantCulture), name, StringComparison.OrdinalIgnoreCase));

    private static readonly string[] DayFormats = ["d MMM", "d MMMM", "MMM d", "MMMM d", "yyyy-MM-dd"];

    [GeneratedRegex(@"^((?<day>\d{4}-\d{2}-\d{2}|\d{1,2} [a-z]{3,9}|(?!match)[a-z]{3,9}( \d{1,2}(?= *:? +(match +)?\d))?) *:? +)?(match +)?(?<first>\d{1,5}([.,]\d{1,2})?)( *(min)? *[x×*] *(?<second>\d{1,5}([.,]\d{1,2})?)| *AU)?$",
        RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Part();
}
