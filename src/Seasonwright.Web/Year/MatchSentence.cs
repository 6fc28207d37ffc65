using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;

namespace Seasonwright.Web.Year;

/// <summary>How panels tell a match.</summary>
internal static class MatchSentence
{
    /// <summary>"Sat 16 Oct 18:30 · home v Turnes".</summary>
    public static string Head(Match match, LocaleSettings locale)
    {
        var day = match.Day is { } first ? first.Short(locale) + (match.LastDay is { } last && last != first ? " – " + last.Short(locale) : "") : Words.Say("match.undated");
        var time = match.KickOff is { } kickOff ? " " + kickOff.Iso() : "";
        return $"{day}{time} · {Words.Say(match.Venue is { } venue ? $"match.at.{venue}" : "match.at")} {match.Opponent ?? Words.Say("match.unknown")}";
    }

    /// <summary>"round 4", or the round's own name: "Quarter-final".</summary>
    public static string Round(string round) => char.IsAsciiDigit(round[0]) ? Words.Say("match.round", round) : round;

    /// <summary>"League, round 4 · conditional · 7 days since the last match".</summary>
    public static string Tail(Season season, Match match)
    {
        var parts = new List<string?> { match.Competition, match.Round is { } round ? Round(round) : null };
        if (match.Status != MatchStatus.Confirmed) parts.Add(Words.Say($"status.{match.Status}"));
        if (match.Importance != Importance.Regular) parts.Add(Words.Say($"importance.{match.Importance}"));
        if (match.IsOnOneDay && season.MatchDays.LastOrDefault(day => day < match.Day) is { Year: > 1 } before) parts.Add(Words.Say("match.since", match.Day!.Value.DayNumber - before.DayNumber));
        if (match.Result is { } result) parts.Add(result);
        if (match.Source?.Vanished == true) parts.Add(Words.Say("match.vanished"));
        return string.Join(" · ", parts.OfType<string>());
    }
}
