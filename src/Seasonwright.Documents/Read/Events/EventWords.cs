using System.Text.RegularExpressions;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// The words of the trade that tell what kind of event a line is, English and German, the commonest also in the other languages of <see cref="Dates.CalendarWords"/>. Common practice, no source. The order
/// is the order of strength: an "exam week at the camp" is exams, a "trip to the tournament" is travel.
/// </summary>
internal static class EventWords
{
    private const string Rooms = "gym|gymnasium|hall|halls|sports hall|room|weight room|weights room|pitch|court|pool|track|facility|facilities|studio|building|turnhalle|sporthalle|halle|kraftraum|platz|schwimmbad|stadion|gymnase|salle|gimnasio|pabellon|palestra|palazzetto|sala|sporthal|zaal|krachthonk|styrkerom\\w*|styrkerum\\w*|hallen|idraetshal\\w*|idrettshall\\w*|sporthall\\w*|treningsrom\\w*|silownia|hala";

    private const string Closed = "shut|shuts|closed|close|closes|closure|closing|unavailable|not available|blocked|block|renew|renewed|renewal|renovat\\w*|refurb\\w*|resurfac\\w*|inspect\\w*|maintenance|occupied|in use|used for|used by|booked|repair\\w*|no access|floor work|works|cleaning|"
        + "gesperrt|sperrung|geschlossen|schliessung|zu|belegt|belegung|renovier\\w*|umbau|reinigung|nicht verfugbar|wartung|ferme\\w*|fermeture|travaux|cerrad\\w*|cierre|obras|chius\\w*|chiusura|lavori|manutenzione|gesloten|dicht|stengt|lukket|stangd|stangt|opptatt|optaget|zamkniet\\w*";

    private static readonly Regex TestDay = Words("fitness (?:test|tests|testing|check)|test (?:day|days|week|battery)|testing(?: day| days| week)?|(?:strength|jump|sprint|speed|shuttle|beep|yo-yo|performance|physical|field|lab) (?:test|tests|testing)|1 ?rm test\\w*|testtage?|leistungstests?|fitnesstests?|leistungsdiagnostik|krafttests?|sprinttests?|sprungtests?|tests? physiques?|test fisic[io]|pruebas? fisicas?|fysiske? test\\w*|fysieke test\\w*|testdag\\w*|testy sprawnosciowe");

    private static readonly Regex NationalTeam = Words("national[- ]?teams?|national (?:squad|selection|duty|camp)|international (?:window|windows|break|duty|week)|window|call[- ]?ups?|nationalmannschaft\\w*|nationalteam\\w*|landerspiel\\w*|auswahllehrgang|kaderlehrgang|equipe nationale|seleccion nacional|nazionale|landslag\\w*|landshold\\w*|landskamp\\w*|reprezentacj\\w*");

    private static readonly Regex Exams = Words("exam|exams|examination|examinations|mocks|mock exams?|finals week|gcses?|a-?levels?|prufung|prufungen|prufungs\\w*|pruefung\\w*|klausur\\w*|abitur|abi|matura|examen|examens|examenes|partiels|bac|baccalaureat|esame|esami|tentamen\\w*|toetsweek|proefwerkweek|eksamen\\w*|tentor|egzamin\\w*");

    private static readonly Regex RoomClosed = Words($"(?:{Rooms})\\b.*\\b(?:{Closed})|(?:{Closed})\\b.*\\b(?:{Rooms})|hallensperr\\w*|hallenschliess\\w*|hallenbelegung|hallenreinigung");

    private static readonly Regex Travel = Words("travel|travels|travelling|traveling|trip|trips|tour|journey|flight|flights|fly|ferry|reise|reisen|anreise|abreise|ruckreise|fahrt|hinfahrt|ruckfahrt|flug|ruckflug|auswartsfahrt|busfahrt|reisetag\\w*|\\w+reise|voyage|deplacement|viaje|viaggio|trasferta|uitreis|reis|rejse|resa|wyjazd");

    private static readonly Regex Camp = Words("camp|camps|bootcamp|training camp|trainingslager|lager|lehrgang|retreat|altitude week|altitude training|hohentraining|trainingswoche|stage|stages|ritiro|concentracion|trainingskamp|treningsleir\\w*|treningssamling\\w*|traeningslejr\\w*|traningslager|oboz");

    private static readonly Regex Tournament = Words("tournament|tournaments|tourney|turnier|turniere|\\w+turnier|trophy|invitational|tournoi|torneo|toernooi|turnering|turniej|torneio|trofeo|championships?|\\w*meisterschaft\\w*");

    private static readonly Regex Gathering = Words("party|service|concert|market|dinner|lunch|gala|fair|ball|speech|prize|photo\\w*|meeting|bbq|barbecue|feier|\\w+feier|konzert|essen|markt|fest|sitzung|inset|assembly|open day|match|game|spiel|cup final");

    private static readonly Regex Holiday = Words("holiday|holidays|break|breaks|half[- ]?term|mid[- ]?term|vacation|vacations|leave|time off|days? off|off season|off-season|bank holiday|reading week|spring recess|recess|christmas|xmas|easter|whitsun|pentecost|new year|new year's|thanksgiving|"
        + "ferien|\\w+ferien|ferientage?|urlaub|weihnachten|weihnachtspause|ostern|pfingsten|neujahr|feiertage?|bruckentag|frei|trainingsfrei|pause|\\w+pause|vacances|toussaint|noel|paques|pont|jours? feries?|vacaciones|navidad|semana santa|puente|festivos?|vacanze|natale|pasqua|vakantie|\\w+vakantie|kerst\\w*|pasen|ferie|\\w+ferie|paske\\w*|hostlov|jullov|sportlov|pasklov|sommarlov|fridag\\w*|helligdag\\w*|swieta|wielkanoc|wakacje");

    private static readonly Regex Notice = new("^(?:nb|n\\.b|note|notes|please|thanks|thank you|ps|issued|updated|version|as of|printed|page|last change|hinweis|bitte|danke|stand|seite|ausgabe|gedruckt|dear|hello|hi|liebe|hallo|regards|best|gruss|the dates|any questions|questions|if you have|contact|call \\d|rsvp|reply|cordialement|bonjour|merci|saludos|saluti|grazie|gracias|groeten|hilsen|mvh|med v(?:en|enn)lig|hei|hej|hola|ciao|(?:sent|gesendet|envoye|subject|betreff|objet|asunto) ?: ?\\w+)\\b", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    private static readonly Regex CalledOff = Words("cancelled|canceled|called off|abgesagt|entfallt|fallt aus|annulliert|annule");

    /// <summary>The kind that a text's words tell; test days are told apart.</summary>
    public static (EventKind Kind, bool IsTest) Of(string text)
    {
        var folded = SpanToken.Fold(text);
        if (TestDay.IsMatch(folded)) return (EventKind.Other, true);
        if (NationalTeam.IsMatch(folded) && !folded.Contains("transfer", StringComparison.Ordinal)) return (EventKind.NationalTeamWindow, false);
        if (Exams.IsMatch(folded)) return (EventKind.Exams, false);
        if (RoomClosed.IsMatch(folded)) return (EventKind.RoomClosed, false);
        if (Travel.IsMatch(folded)) return (EventKind.Travel, false);
        if (Camp.IsMatch(folded)) return (EventKind.Camp, false);
        if (Tournament.IsMatch(folded)) return (EventKind.Tournament, false);
        if (Gathering.IsMatch(folded)) return (EventKind.Other, false);
        return (Holiday.IsMatch(folded) ? EventKind.Holiday : EventKind.Other, false);
    }

    /// <summary>The kind a cell of a column of kinds names, or null where the title must tell.</summary>
    public static (EventKind Kind, bool IsTest)? OfKindCell(string cell) => SpanToken.Fold(cell).Trim() switch
    {
        "" => null,
        "test" or "tests" or "testing" or "test day" => (EventKind.Other, true),
        "other" or "misc" or "event" or "sonstiges" or "anderes" => (EventKind.Other, false),
        "room" or "hall" or "gym" or "halle" or "raum" or "facility" or "closure" or "closed" or "sperrung" => (EventKind.RoomClosed, false),
        "national" or "nt" or "international" => (EventKind.NationalTeamWindow, false),
        "cup" => (EventKind.Tournament, false),
        "bus" or "trip" => (EventKind.Travel, false),
        var folded => Of(folded) is (not EventKind.Other, _) or (_, true) ? Of(folded) : null,
    };

    /// <summary>Whether a line speaks to its reader rather than naming an event: "NB ...", "Please ...".</summary>
    public static bool IsNotice(string text) => Notice.IsMatch(SpanToken.Fold(text));

    public static bool IsCalledOff(string text) => CalledOff.IsMatch(SpanToken.Fold(text));

    internal static Regex Words(string words) => new($"\\b(?:{words})\\b", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);
}
