using System.Collections.Frozen;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>
/// What the headings of fixture lists are called, in the languages of <see cref="Dates.CalendarWords"/>. From memory. Words that name
/// different things in different lists ("Day", "Nr.", "Start") stand under the likelier one; the column's cells decide later.
/// </summary>
internal static class HeadingWords
{
    private static readonly FrozenDictionary<string, ColumnRole> Words = new (ColumnRole Role, string Words)[]
    {
        (ColumnRole.SourceId, "match no|match nr|match number|match id|match #|matchno|matchid|match_id|game no|game number|game id|game #|fixture id|fixture no|fixture number|id|uid|code|match code|spielnummer|spielnr|spiel nr|spiel-nr|kampnr|kampnummer|matchnr|matchnummer|wedstrijdnummer|n° match|numéro de match|nº partido|id partido|no|nr|num|number|#|n°|nº|numéro|lfd nr|pos|kampid|núm|numero|lp|numer|nr meczu|gara n|n gara|num match|wedstrijdnr"),
        (ColumnRole.Round, "round|rd|matchday|match day|md|spieltag|runde|stage|phase|journée|jornada|ronda|giornata|turno|speelronde|ronde|omgang|gameweek|game week|gw|week no|tour|kolejka|runda|jornada nº|tour n°|giornata n"),
        (ColumnRole.Date, "date|datum|day|when|fecha|data|dato|dag|tag|jour|match date|game date|spieldatum|kampdato|date du match|termin|wann|dates|week|kw|jour du match|fecha partido|data gara|data meczu|dzień meczu|giorno gara|speeldatum"),
        (ColumnRole.Weekday, "weekday|wochentag|day of week|dow|jour de la semaine|día|giorno|ugedag|veckodag|wd|dzień|ukedag|dag i uken"),
        (ColumnRole.KickOff, "time|ko|kick-off|kickoff|kick off|throw-off|throwoff|throw off|start|start time|starts|anpfiff|anwurf|anstoß|anstoss|beginn|uhrzeit|zeit|uhr|heure|horaire|hora|orario|ora|tid|tidspunkt|tijd|aanvang|tip-off|tipoff|tip off|tip|face-off|faceoff|face off|puck drop|avspark|avkast|nedsläpp|push back|pushback|first serve|local time|coup d'envoi|begin|kl|klokka|kampstart|anwurfzeit|anstoßzeit|anstosszeit|spielbeginn|startzeit|starttid|godz|godzina|ora inizio|hora inicio|heure de début|begintijd|aanvangstijd|throw-off time|kick-off time|ko time|pushback time"),
        (ColumnRole.Home, "home|home team|hometeam|home side|heim|heimteam|heimmannschaft|heimverein|gastgeber|hosts|host|domicile|équipe à domicile|recevant|local|equipo local|casa|squadra casa|squadra di casa|hjemme|hjemmehold|hjemmelag|hemma|hemmalag|thuis|thuisploeg|team1|team 1|équipe 1|mandante|gospodarz|gospodarze|drużyna gospodarzy|locaux|local team|home club|home name|casa (h)|thuisteam|heimmannschaften"),
        (ColumnRole.Away, "away|away team|awayteam|away side|visitors|visitor|visiting team|gast|gastteam|gastmannschaft|gastverein|gäste|guests|guest|extérieur|visiteur|visiteurs|équipe visiteuse|visitante|equipo visitante|ospite|ospiti|fuori|trasferta|ude|udehold|bortelag|borta|bortalag|uit|uitploeg|team2|team 2|équipe 2|gość|goście|drużyna gości|away club|away name|visitantes|uitteam|gæster|gjester|gäster"),
        (ColumnRole.Opponent, "opponent|opponents|opposition|opposing team|against|versus|vs|v|gegner|adversaire|rival|oponente|contrincante|avversario|avversari|modstander|motstander|motståndare|tegenstander|adversário|who|przeciwnik|rywal|tegenpartij|kontrahent|rivale|modståndere"),
        (ColumnRole.Match, "match|fixture|fixtures|game|teams|spiel|begegnung|paarung|partie|partido|encuentro|partita|incontro|gara|kamp|wedstrijd|rencontre|match up|matchup|pairing|event|title|summary|subject|jogo|mecz|spotkanie|oppgjør|encontro"),
        (ColumnRole.Venue, "venue|where|h/a|ha|h/a/n|home/away|home or away|home / away|heim/auswärts|h oder a|h/g|ground|court|pitch|field|stadium|stadion|arena|hall|gym|place|location|site|ort|spielort|spielstätte|halle|sporthalle|platz|lieu|salle|stade|terrain|dom/ext|lugar|sede|cancha|pabellón|campo|luogo|impianto|palestra|sted|hal|spillested|spelplats|plats|locatie|veld|zaal|l/v|local/visitante|wo|hala|miejsce|miejsce meczu|gymnase|pista|recinto|sporthal|palasport|palazzetto|bane|kampsted|arena/hall|t/u|u/t|h/u|h/b|d/e|d/v|c/f|casa/fuera|casa/fuori|casa/trasferta|thuis/uit|hjemme/ude|hjemme/borte|hemma/borta|domicile/extérieur|dom/wyjazd|heim/gast|heim / gast|local/visita"),
        (ColumnRole.Competition, "competition|comp|comps|league|league/cup|cup|type|match type|fixture type|game type|wettbewerb|bewerb|liga|klasse|staffel|art|compétition|épreuve|championnat|competición|torneo|competizione|campionato|turnering|række|serie|series|tournament|division|kind|competitie|competição|rozgrywki|competición/torneo|kompetition|tävling"),
        (ColumnRole.Status, "status|state|zustand|statut|état|estado|stato|confirmed|uwaga"),
        (ColumnRole.Result, "result|results|score|scores|ergebnis|endstand|resultat|résultat|resultado|marcador|risultato|uitslag|ft|full time|full-time|final score|res|stand|final|wynik|h-b|h-u|mål|tore|goals|pts|points|gol|goles|buts|reti|doelpunten|bramki|målscore|slutresultat|kampresultat"),
        (ColumnRole.Remarks, "remarks|remark|notes|note|comments|comment|info|information|bemerkung|bemerkungen|anmerkung|anmerkungen|hinweis|hinweise|notiz|remarques|remarque|observations|notas|observaciones|comentarios|commenti|bemærkning|bemærkninger|kommentar|kommentarer|merknad|anmärkning|opmerking|opmerkingen|details|other|sonstiges|conditions|condition|uwagi|noter|merknader|anm|bem|obs|opm|annotazioni"),
        (ColumnRole.Team, "team|squad|our team|mannschaft|team name|équipe|equipo|squadra|hold|lag|side|age group|altersklasse|xi|elftal|holdnavn|drużyna"),
    }.SelectMany(entry => entry.Words.Split('|').Select(word => (word, entry.Role))).ToFrozenDictionary(entry => entry.word, entry => entry.Role, StringComparer.Ordinal);

    /// <summary>Headings that may be a running number as well as an id.</summary>
    private static readonly FrozenSet<string> Numbers = "no|nr|num|number|#|n°|nº|numéro|lfd nr|pos".Split('|').ToFrozenSet(StringComparer.Ordinal);

    /// <summary>A time that is not the start of the match, or a score that is not its last: when to meet, leave or be back, half time.</summary>
    public static bool IsOtherTime(string heading) => Plain(heading).Split(' ').Any(word => OtherTimes.Any(time => word.StartsWith(time, StringComparison.Ordinal)));

    private static readonly string[] OtherTimes = "meet|bus|coach|depart|leav|arriv|return|warm|end|finish|door|treff|abfahrt|rückkehr|ankunft|ende|einlass|halbzeit|half|ht|rendez|départ|salida|vuelta|llegada|ritrovo|partenza|samling|mødetid|oppmøte|afgang|avgang|verzamel|vertrek|zbiórka|wyjazd".Split('|');

    public static ColumnRole? RoleOf(string heading) => Words.TryGetValue(Plain(heading), out var role) ? role : null;

    /// <summary>"Nr.", "#": the list's running number unless its cells say more.</summary>
    public static bool IsBareNumber(string heading) => Numbers.Contains(Plain(heading));

    // Lower case, without what stands in brackets, points and a closing colon.
    private static string Plain(string heading)
    {
        var plain = Spelling.Fold(heading);
        var bracket = plain.IndexOfAny(['(', '[']);
        if (bracket > 0) plain = plain[..bracket];
        return plain.Replace(".", "", StringComparison.Ordinal).Trim(' ', ':', '*', '_');
    }
}
