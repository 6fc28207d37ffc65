using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>
/// Words and short codes of positions in team sports, and of who else stands on a list, in the languages lists come in. From memory. They only
/// tell position from remark in lines of prose and headings from people; in a column of positions everything is taken as written.
/// </summary>
internal static class PositionWords
{
    private static readonly Regex Positions = Whole(
        "(?:left|right|loose|tight|open|blind|inside|outside|middle|opposite|full|half|wing|fly|scrum|centre|center|line|point|shooting|small|power|goal|short|first|second|third|strong|free|defensive|attacking|offensive|wide|back|corner|running|quarter|tight|nose|deep|holding|striking|stand-?off)?[- ]?"
        + "(?:goal ?keepers?|keepers?|goalies?|backs?|half|halves|halfback|wings?|wingers?|pivots?|line players?|centres?|centers?|props?|hookers?|locks?|second rows?|flankers?|number 8|number eight|no ?8|eight(?:h ?man)?|setters?|hitters?|blockers?|liberos?|opposites?|spikers?|diggers?|guards?|forwards?|strikers?|defen[cd]ers?|defen[cs]e|midfielders?|midfield|mid|sweepers?|attackers?|attack|receivers?|ends?|tackles?|linebackers?|safety|kickers?|punters?|pitchers?|catchers?|base(?:man)?|shortstops?|fielders?|outfielders?|infielders?|bowlers?|batters?|batsm[ae]n|all-?rounders?|wicket-?keepers?|stroke|bow|cox|utility(?: back)?|skips?|fly-?half|scrum-?half|five-eighth|stand-?off|outside)"
        + "|torwarte?|torfrau|torhuter(?:in(?:nen)?)?|tor|keeper|kreis(?:laufer(?:in(?:nen)?)?)?|(?:links|rechts|ruckraum|linke[rs]?|rechte[rs]?)[- ]?(?:aussen|links|rechts|mitte|aussenspieler|ruckraum|verteidiger|flugel)?|ruckraum(?:spieler(?:in(?:nen)?)?)?|aussen(?:angreifer(?:in(?:nen)?)?|verteidiger)?|spielmacher(?:in)?|zuspiel(?:er(?:in(?:nen)?)?)?|mittelblock(?:er(?:in(?:nen)?)?)?|diagonal(?:angreifer(?:in)?)?|annahme|abwehr|verteidig(?:er(?:in(?:nen)?)?|ung)|innenverteidiger(?:in)?|mittelfeld(?:spieler(?:in)?)?|sturm(?:er(?:in(?:nen)?)?)?|angriff|feldspieler(?:in(?:nen)?)?"
        + "|gardiens?(?: de but)?|gardiennes?|ailiers?|ailieres?|arrieres?|demi-?centre|pivots?|defenseurs?|milieux?|attaquants?|passeurs?|piliers?|talonneurs?|deuxieme ligne|troisieme ligne|ouvreur|demi de melee|demi d'ouverture|porter[oa]s?|extremos?|laterales?|central(?:es)?|pivote|defensas?|centrocampistas?|delanter[oa]s?|portier[ei]|ala|terzin[oi]|centrale|difensor[ei]|centrocampist[aei]|attaccant[ei]|palleggiator[ei]|schiacciator[ei]|opposto|malvakt(?:er)?|malmann|maalmand|malvogter?|keepere?|bakspiller?e?|playmaker|kantspiller?e?|kant|strek(?:spiller)?|stregspiller|fløy|back(?:spillere?)?|linjespelare|mittsexa|vansternia|hogernia|kantspelare|forsvar(?:er)?e?|midtbane|angrep|angriber|anfallare|doelvrouw|doelman|keepsters?|hoek(?:spelers?)?|opbouw(?:ers?)?|cirkel(?:lopers?)?|verdedigers?|middenvelders?|aanvallers?|bramkar(?:z|ka|ze)|obrotow[ya]|skrzydlow[ya]|rozgrywajac[ya]|obronc[ay]|pomocni[kc]y?|napastni[kc]y?"
        + "|tw|rl|rm|rr|la|ra|km|kr|lw|rw|lb|rb|cb|gk|gw|p|pv|lp|cm|dm|am|st|cf|fb|hb|sh|fh|no8|n8|wk|oh|mb|opp|oppo|s|l|ds|pg|sg|sf|pf|c|g|f|d|m|fw|mf|df|lf|rf|cd|wd|ga|gs|wa|gd|mw|av|iv|zm|zdm|zom|lv|rv|ms|hs|aa|dia|lib|zs|qb|wr|te|ol|dl|de|dt|db|ss|fs|k|ls");

    private static readonly Regex Staff = EventWords.Words("staff|coach|coaches|head coach|assistant|manager|managers|management|physician|doctor|physio\\w*|therapist|trainer|trainerin|trainerteam|trainerstab|co-?trainer|betreuer\\w*|arzt|mannschaftsarzt|teamarzt|athletiktrainer\\w*|analyst|kit ?man|director|officials?|s&c|strength and conditioning|support team|backroom|entraineurs?|encadrement|entrenador\\w*|cuerpo tecnico|allenator\\w*|staff tecnico|trenere?|tranare|ledere?|coachs?|begeleiding|sztab|trener\\w*|treinador\\w*|equipa tecnica|stab|funktionsteam|offizielle");

    private static readonly Regex Trial = EventWords.Words("trial(?:ist|ists|s| player| players)?|trialling|guest player|on trial|probe|probe(?:spiel|train)\\w*|zur probe|gastspieler\\w*|testspieler\\w*|a l'essai|stage d'essai|a prueba|in prova|provino|op proef|proef(?:speler|speelster|train)\\w*|pa prove|prove(?:spill|tren|traen)\\w*|provspel\\w*|provtranar\\w*|na testach|testowan\\w*");

    private static readonly Regex Captain = Whole("(?:\\(?(?:c|k|vc|v/c|cap|capt|captain|vice|vice[- ]?captain|co-?captain|kapitan|kapitanin|mannschaftsfuhrer(?:in)?|spielfuhrer(?:in)?|stv|sf|mf|capitaine|cap|capitan|capitana|capitano|aanvoerder|anforer|kaptein|kapten|lagkapten|kapitao|©|ⓒ)\\)?)");

    private static readonly Regex Nobody = Whole("(?:tb[cad]|tbc\\.?|n\\.?n\\.?|n/a|vacant|vakant|open|offen|frei|free|-+|\\?+|x+|unknown|unbekannt|to be confirmed|to be announced|wird (?:noch )?(?:bekanntgegeben|nachgemeldet)|neuzugang|new signing|nobody|a definir|da definire|player \\d+|spieler \\d+)");

    // "Max" and "Min" are names too.
    private static readonly Regex Totals = Whole("(?:average|averages|avg|mean|median|total|totals|sum|count|schnitt|durchschnitt|mittel|mittelwert|summe|gesamt|anzahl|insgesamt|moyenne|media|promedio|gemiddelde|gemiddeld|gjennomsnitt|gennemsnit|medel|medelvarde|snitt|srednia|totaal|totale|totalt|i alt|razem|suma|standard deviation|stdev)"
        + "(?: (?:squad|team|of|weight|mass|gewicht|age|alter|height|players?|spieler\\w*|kader|kg|lbs?))*[ :=]*[\\d .,()+/%-]*(?:players?|spieler\\w*)?");

    private static readonly Regex Squad = EventWords.Words("squad|squads|roster|team ?list|player list|players|kader|kaderliste|aufgebot|spielerliste|spielerinnen|mannschaftsliste|effectif|groupe|joueurs|joueuses|plantilla|convocatoria|jugador[ae]s|rosa|convocati|giocator[ei]|giocatrici|selectie|spelerslijst|tropp(?:en)?|stall(?:en)?|spillertrupp|spillerliste|trupp(?:en)?|trup|plantel|elenco|kadra|sklad|lista");

    public static bool IsPosition(string text) => Is(Positions, text);

    /// <summary>A word for who is on the list besides players.</summary>
    public static bool IsStaff(string text) => Staff.IsMatch(SpanToken.Fold(text));

    public static bool IsTrial(string text) => Trial.IsMatch(SpanToken.Fold(text));

    public static bool IsCaptain(string text) => Is(Captain, text);

    /// <summary>What stands where nobody is named yet.</summary>
    public static bool IsNobody(string text) => Is(Nobody, text);

    /// <summary>The text begins as totals and averages do ("Ø", "Total: 9").</summary>
    public static bool IsTotal(string text) => text.TrimStart().StartsWith('Ø') || Is(Totals, text);

    /// <summary>The text names a squad list ("Kader 2026/27").</summary>
    public static bool NamesSquad(string text) => Squad.IsMatch(SpanToken.Fold(text));

    private static bool Is(Regex words, string text) => text.Length is > 0 and <= 60 && words.IsMatch(SpanToken.Fold(text).Trim(' ', '.', ':'));

    private static Regex Whole(string words) => new($"^(?:{words})$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);
}
