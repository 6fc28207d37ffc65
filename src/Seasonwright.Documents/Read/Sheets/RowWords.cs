using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>What the label of a row says it holds, in the languages of <see cref="Dates.CalendarWords"/>. Words of the trade, from memory.</summary>
internal static class RowWords
{
    private static readonly Regex Old = EventWords.Words("old|alt|alte|previous|last year|vorjahr|bisher|ancien\\w*|anterior|viejo|vecchi\\w*|oud|oude|gammel|gamle|gammal|star[yae]|copy|kopie|backup|do not use|not used|unused");

    private static readonly Regex Phase = EventWords.Words("phases?|abschnitte?|periods?|periode[nr]?|periodes?|macrocycles?|makrozyklus|makrozyklen|fases?|fas|faser|faza|fazy|periodi?|periodos?|etapas?|etapy?|season part");

    private static readonly Regex Block = EventWords.Words("blocks?|bloecke|blocke|blocs?|bloques?|blocchi|blocco|blokken|blok|blokke|mesocycles?|mesozyklus|mesozyklen|meso|mesociclos?|mesocicli|mezocykl\\w*");

    private static readonly Regex Load = EventWords.Words("loads?|loading|load target|weekly load|belastung\\w*|trainingsbelastung|charges?|cargas?|carichi|carico|belasting|belastning\\w*|obciazeni[ea]|hard ?/ ?easy|easy ?/ ?hard");

    private static readonly Regex Match = EventWords.Words("match|matches|matchs|games?|fixtures?|opponents?|spiele?|spieltage?|gegner\\w*|rencontres?|adversaires?|partidos?|rival|rivales|partit[ae]|avversari\\w*|wedstrijd\\w*|tegenstander\\w*|kamp|kamper|kampe|motstander|modstander|motstandare|matcher|mecz\\w*|rywal|jogos?");

    private static readonly Regex Test = EventWords.Words("tests?|testing|test days?|testtage?|tester|testdag\\w*|pruebas|testy");

    private static readonly Regex Event = EventWords.Words("events?|termine?|holidays?|ferien|camps?|evenements?|eventos?|eventi|arrangement\\w*|handelser|wydarzenia");

    /// <summary>Left over from another plan; not read unless asked.</summary>
    public static bool IsOld(string label) => Old.IsMatch(SpanToken.Fold(label));

    /// <summary>Null where the label says none.</summary>
    public static RowRole? Of(string label)
    {
        var folded = SpanToken.Fold(label);
        if (folded.Length is 0 or > 40) return null;
        // "Match load" is a load, "Test match" a match.
        if (Load.IsMatch(folded)) return RowRole.Load;
        if (Phase.IsMatch(folded)) return RowRole.Phases;
        if (Block.IsMatch(folded)) return RowRole.Blocks;
        if (Match.IsMatch(folded)) return RowRole.Matches;
        if (Test.IsMatch(folded)) return RowRole.Tests;
        return Event.IsMatch(folded) ? RowRole.Events : null;
    }
}
