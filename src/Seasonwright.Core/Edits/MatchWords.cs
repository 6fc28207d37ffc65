using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>How the history names a match: "Sat 16 Oct 2027, home v Turnes".</summary>
internal static class MatchWords
{
    public static string Of(Match match) => Sentences.Say(
        match.Venue is { } venue ? $"match.{venue}" : "match.anywhere", Days(match), match.Opponent ?? Sentences.Say("match.unknown"));

    public static string Of(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Days(Match match) => (match.Day, match.LastDay) switch
    {
        (null, _) => Sentences.Say("match.undated"),
        ({ } first, { } last) when first != last => Sentences.Say("match.window", Of(first), Of(last)),
        ({ } day, _) => Of(day),
    };
}
