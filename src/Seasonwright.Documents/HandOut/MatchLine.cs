using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>A match on one line of a sheet.</summary>
internal static class MatchLine
{
    /// <summary>"Sat 16 Oct: 18:30 Home v Turnes, League 7, Quay Hall".</summary>
    public static string Of(Match match, YearWords words)
    {
        var days = match.Days is not { } span ? "" : span.Length == 1 ? words.ShortDay(span.First) : Say("sheet.span", words.ShortDay(span.First), words.ShortDay(span.Last));
        return PlainText.Clean(Say("sheet.line", days, Whom(match)));
    }

    /// <summary>"18:30 Home v Turnes, League 7, Quay Hall".</summary>
    public static string Whom(Match match)
    {
        var whom = Say($"calendar.match.{match.Venue?.ToString() ?? "Unknown"}", match.Opponent ?? Say("calendar.match.open"));
        var when = match.KickOff is { } time ? $"{time.Iso()} {whom}" : whom;
        return PlainText.Clean(YearWords.Join([when, .. Details(match), .. match.Place is { } place ? new[] { place } : []]));
    }

    /// <summary>"League 7", "Cup, second round", "friendly", "provisional", "31-24".</summary>
    private static IEnumerable<string> Details(Match match)
    {
        var numbered = match.Round?.All(char.IsAsciiDigit) == true;
        if (match.Competition is { } competition) yield return numbered ? $"{competition} {match.Round}" : competition;
        if (match.Round is { } round && !(numbered && match.Competition is not null)) yield return round;
        // Said already where the competition is called so.
        var said = match with { Competition = null, Round = null, Result = null, Importance = match.Importance == Importance.Friendly && match.Competition is not null ? Importance.Regular : match.Importance };
        foreach (var detail in YearWords.Details(said)) yield return detail;
        if (match.Result is { } result) yield return result;
    }
}
