using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>How the history names a match: "Sat 16 Oct 2027, home v Turnes".</summary>
internal static class MatchWords
{
    public static string Of(Match match)
    {
        var day = match.Day is { } first ? Of(first) + (match.LastDay is { } last && last != first ? $" to {Of(last)}" : "") : "undated";
        var where = match.Venue switch { Venue.Home => "home v", Venue.Away => "away at", Venue.Neutral => "neutral v", _ => "v" };
        return $"{day}, {where} {match.Opponent ?? "unknown"}";
    }

    public static string Of(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
}
