namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>Words of fixture lists that say what a row is, in the languages of <see cref="Dates.CalendarWords"/>. From memory.</summary>
internal static class ListWords
{
    private static readonly string[] Byes = Words("bye|bye week|open date|no match|no game|no fixture|free|rest|spielfrei|frei|exempt|exempté|repos|descansa|descanso|libre|riposo|riposa|oversidder|fri|frirunde|fri runde|vrij|folga|pauza|pauzuje|wolny los|wolne|spielfreies wochenende|ledig|vapaa|rustdag|pausa|folgar|reposo|turno di riposo|turno libre|bye-week");

    private static readonly string[] Postponed = Words("postponed|p-p|pp|ppd|post.|verlegt|verschoben|reporté|reportée|remis|aplazado|aplazada|rinviata|rinviato|udsat|utsatt|uppskjuten|uppskjutet|uitgesteld|adiado|rescheduled|to be rearranged|to be rescheduled|abgesetzt|neu angesetzt|przełożony|przełożone|przełożona|przeniesiony|odroczony|pospuesto|pospuesta|postergado|postergada|rimandata|rimandato|verplaatst|verzet|flyttet|flyttad|udskudt|utsatt kamp|omberammet|berammes senere|à replanifier|p p");

    private static readonly string[] Cancelled = Words("cancelled|canceled|called off|abgesagt|annulé|annulée|cancelado|cancelada|suspendido|annullata|annullato|aflyst|avlyst|inställd|inställt|afgelast|vervallen|cancelled.|fällt aus|entfällt|scratched|withdrawn|ausgefallen|gestrichen|odwołany|odwołane|odwołana|geannuleerd|gestaakt voor aanvang|nicht ausgetragen|not played|anulado|anulada|soppressa|indstillet|innstilt|struken|void|canc|cncl|canx");

    private static readonly string[] Replacements = Words("replaces|replacement|instead of|new date|rearranged from|re-arranged from|rescheduled from|moved from|postponed from|verlegt vom|neuer termin|nachholspiel|nachholtermin|match en retard|recupero|nueva fecha|omkamp|ny dato|nytt datum");

    private static readonly string[] Tentative = Words("provisional|tentative|provisorisch|vorläufig|unter vorbehalt|unbestätigt|to be confirmed|date tbc|tbc|not confirmed|unconfirmed|provisoire|sous réserve|provisional.|da confermare|por confirmar|foreløbig|preliminär|voorlopig|pencilled in|orientacyjny|do potwierdzenia|skal bekræftes|må bekreftes|nog te bevestigen|onder voorbehoud|previsto|prévisionnel|indicatif");

    // In front of a text each of these is a condition; inside one only the longer ones are ("bring kit if wet" is none).
    private static readonly string[] Conditions = Words("if|only if|falls|nur falls|sofern|wenn|nur wenn|nur bei|im falle|should we|in case|si|se|hvis|om vi|indien|conditional|bedingt|subject to qualification");

    private static readonly string[] InnerConditions = Words("only if|if we|if needed|if necessary|if required|if qualified|if reached|if through|falls nötig|falls erforderlich|falls wir|wenn wir|si nécessaire|si necesario|se necessario|hvis nødvendigt|om nödvändigt|indien nodig|subject to qualification|subject to");

    private static readonly string[] Needed = Words("if needed|if necessary|if required|falls nötig|falls erforderlich|si nécessaire|si necesario|se necessario|hvis nødvendigt|hvis nødvendig|om nödvändigt|indien nodig");

    private static readonly string[] Totals = Words("total|totals|totaal|summe|gesamt|insgesamt|sum|subtotal|sub-total|zwischensumme|total:|totale|i alt|totalt|somme|suma|razem|łącznie|totaal aantal|ialt|i alt:|sammenlagt|gesamtsumme");

    private static readonly string[] Places = Words("winner|winners|loser|losers|runner-up|runners-up|sieger|gewinner|verlierer|vainqueur|perdant|ganador|perdedor|vincente|perdente|vinder|taber|vinner|taper|winnaar|verliezer|vinnare|w/o|zwycięzca|przegrany|vencedor|vencedora|perdedora");

    private static readonly string[] Inside = Words("internal|intern|in-house|inhouse|training|practice|training camp|trainingslager|camp|meeting|trials|trial|fitness test|fitness testing|house match|house matches|intrasquad|intra-squad|scrimmage day|photo day|social");

    private static readonly string[] Friendlies = Words("friendly|friendlies|friendly match|testspiel|freundschaftsspiel|vorbereitungsspiel|test match|pre-season|preseason|pre-season friendly|amical|match amical|amistoso|amichevole|venskabskamp|treningskamp|träningsmatch|oefenwedstrijd|vriendschappelijk|exhibition|towarzyski|sparing|vriendschappelijke|venskab|vennskapskamp|amistosa|amichevoli");

    private static readonly string[] Furniture = Words("report|tickets|ticket|match report|bericht|spielbericht|details|highlights|live|preview|stats|statistics|video|buy|buy tickets|more|info|show more|menu|advertisement|anzeige|werbung|cookies|contact|share|print|download|follow|watch");

    public static bool IsBye(string cell) => Is(cell, Byes) || Spelling.Fold(cell) is { } text && (text.StartsWith("bye:", StringComparison.Ordinal) || text.StartsWith("bye ", StringComparison.Ordinal) || text.StartsWith("spielfrei:", StringComparison.Ordinal) || text.StartsWith("exempt :", StringComparison.Ordinal) || text.StartsWith("exempt:", StringComparison.Ordinal));

    /// <summary>The whole cell, or a cell with more in it that begins so ("Postponed, see 9/12").</summary>
    public static bool IsPostponed(string text) => Holds(text, Postponed) && !IsReplacement(text);

    public static bool IsCancelled(string text) => Holds(text, Cancelled);

    /// <summary>Given to one side without play, or broken off.</summary>
    public static bool IsUnplayed(string text) => Holds(text, Unplayed);

    private static readonly string[] Unplayed = Words("walkover|walk-over|w o|w.o.|forfeit|forfeited|am grünen tisch|kampflos|forfait|incomparecencia|a tavolino|walkower|abandoned|aban|abd|abgebrochen|spielabbruch|arrêté|interrompu|interrupted|interrumpido|interrotta|sospesa|afbrudt|avbrutt|avbruten|gestaakt|przerwany|a-w|h-w");

    /// <summary>The row is the new date of a match that was postponed.</summary>
    public static bool IsReplacement(string text) => Holds(text, Replacements);

    /// <summary>The match is provisional; "tbc" alone says so only where the whole text is that.</summary>
    public static bool IsTentative(string text) => Is(text, Tentative) || Holds(text, Tentative.Where(word => word is not ("tbc" or "to be confirmed")));

    public static bool IsCondition(string text) => Holds(text, InnerConditions) || Conditions.Any(word => Spelling.Fold(text).StartsWith(word + " ", StringComparison.Ordinal) || Spelling.Fold(text) == word);

    /// <summary>"If needed": a game of a series, which says nothing about whether the series is reached.</summary>
    public static bool IsIfNeeded(string text) => Holds(text, Needed);

    /// <summary>A new date is promised ("new date follows").</summary>
    public static bool IsDatePromised(string text) => Holds(text, Promises);

    private static readonly string[] Promises = Words("follows|to follow|follow|folgt|new date tbc|suivra|sigue|seguirà|følger|följer|volgt");

    public static bool IsTotal(string cell) => Spelling.Fold(cell) is { Length: > 0 } text && Totals.Any(word => text == word || text.StartsWith(word + " ", StringComparison.Ordinal) || text.StartsWith(word + ":", StringComparison.Ordinal));

    public static bool IsInside(string cell) => Is(cell, Inside);

    public static bool IsFriendly(string competition) => Holds(competition, Friendlies);

    public static bool IsFurniture(string cell) => Is(cell.TrimEnd('▾', '▸', '»', '>', ' '), Furniture);

    /// <summary>The opponent is no team but a place that some team will take: "Winner R16-5", "2nd in league", "Group A 1st".</summary>
    public static bool IsPlace(string opponent)
    {
        if (Holds(opponent, Places)) return true;
        var words = Split(opponent);
        return words.Any(IsOrdinal) && words.Any(word => word is "in" or "of" or "place" or "group" or "league" or "table" or "platz" or "tabelle" or "gruppe" or "seed" or "seeded" or "best" or "placed" or "poule" or "pool");
    }

    private static bool IsOrdinal(string word) => word.Length >= 2 && char.IsAsciiDigit(word[0]) && (word.EndsWith("st", StringComparison.Ordinal) || word.EndsWith("nd", StringComparison.Ordinal) || word.EndsWith("rd", StringComparison.Ordinal) || word.EndsWith("th", StringComparison.Ordinal) || word.EndsWith('.'))
        || word is "first" or "second" or "third" or "fourth" or "erster" or "zweiter" or "dritter";

    private static bool Is(string cell, string[] words) => words.Contains(Spelling.Fold(cell).Trim('.', '!', ':', '(', ')', '*', '-', ' '), StringComparer.Ordinal);

    /// <summary>One of the phrases stands in the text as whole words.</summary>
    private static bool Holds(string text, IEnumerable<string> phrases)
    {
        if (text.Length == 0) return false;
        var spaced = $" {string.Join(' ', Split(text))} ";
        return phrases.Any(phrase => spaced.Contains($" {phrase} ", StringComparison.Ordinal));
    }

    private static string[] Split(string text) => Spelling.Fold(text).Split([' ', ',', ';', '(', ')', '[', ']', '/', '!', ':', '–', '—', '"'], StringSplitOptions.RemoveEmptyEntries);

    private static string[] Words(string list) => list.Split('|');
}
