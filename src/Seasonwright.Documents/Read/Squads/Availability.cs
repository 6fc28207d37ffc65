using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What squad lists say of whether somebody can play, with nothing of why: that is for staff to say in the program. Common practice, no source.</summary>
internal static class Availability
{
    // "ok", "fit": how available somebody is, which staff set in the program and no list does.
    private static readonly Regex Present = EventWords.Words("ok|okay|fit|available|active|aktiv|healthy|full|yes|y|ja|oui|si|frisk|klar|ready|bereit|all good|good|no issues|none|keine|dispo|disponible|verfugbar");

    private static readonly Regex Absent = EventWords.Words("injured(?: list)?|injuries|out|unavailable|not available|absent|missing|sick|ill|long[- ]term|rehab|verletzte?|krank|fehlt|fehlen|nicht dabei|ausfall|ausfalle|blessee?s?|indisponibles?|absents?|lesionad[oa]s?|bajas?|infortunat[ie]|indisponibili|assenti|geblesseerd|afwezig|skadede?|skadet|skadade|kontuzjowan\\w*");

    /// <summary>The whole text says only that somebody is available.</summary>
    public static bool IsSaid(string text) => Whole(Present, text);

    /// <summary>The whole text says that those named behind it are out.</summary>
    public static bool IsAbsence(string text) => Whole(Absent, text);

    private static bool Whole(Regex words, string text)
    {
        var folded = SpanToken.Fold(text).Trim(' ', '.', '!', ':', '-');
        return folded.Length > 0 && words.Match(folded) is { Success: true } match && match.Length == folded.Length;
    }
}
