using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>
/// Obvious health details of people: they belong into a private medical note, never into a plan that others see. Only plain words
/// are known, in the languages of <see cref="Dates.CalendarWords"/>; the field's hint "no health details" stays needed.
/// </summary>
internal static class HealthWords
{
    private static readonly Regex Detail = EventWords.Words(
        "injur\\w*|surgery|surgeries|operated|knee op|post-?op|acl|mcl|meniscus|concuss\\w*|fractur\\w*|broken (?:arm|leg|hand|finger|foot|ankle|wrist|rib|nose)|sprain\\w*|strain\\w*|ruptur\\w*|torn|dislocat\\w*|hamstring|groin|achilles|rehab|rehabilitation|physio(?:therapy)?|"
        + "mri|x-?ray|diagnos\\w*|medication|antibiotic\\w*|painkiller\\w*|inhaler|asthma\\w*|diabet\\w*|epilep\\w*|anaemi\\w*|anemi\\w*|pregnan\\w*|ill|illness|sick|sick leave|flu|covid|fever|glandular|depress\\w*|anxiety|eating disorder|allerg\\w*|hospital|"
        + "verletz\\w*|\\w*operation|operiert|kreuzband\\w*|gehirnerschutterung|bruch|gebrochen|knochenbruch|bander\\w*|muskelfaser\\w*|zerrung|reha|krank\\w*|grippe|fieber|schwanger\\w*|arzttermin|medikament\\w*|depression|allergie\\w*|"
        + "blesse\\w*|blessures?|commotion|entorse|malade|maladie|dechirure|enceinte|grossesse|reeducation|lesion\\w*|lesao|esguince|conmocion|enferm\\w*|embaraz\\w*|infortun\\w*|distorsione|frattura|stiramento|malat\\w*|crociato|incinta|gravidanza|"
        + "geblesseerd\\w*|hersenschudding|ziek\\w*|kruisband\\w*|gebroken|zwanger\\w*|revalid\\w*|skadet?|skadede|skadad|hjernerystelse|hjarnskakning|korsband\\w*|syk|sykmeldt?|sygemeldt|syg|sjuk\\w*|brukket|operert|opereret|opererad|gravid|forstuv\\w*|"
        + "kontuzj\\w*|uraz|wstrzas\\w*|zlaman\\w*|chor[ay]|choroba|operacj\\w*|ciaz[ay]");

    // Courses and rooms that speak of health without telling anybody's.
    private static readonly Regex Harmless = EventWords.Words("injury prevention|prevention of injur\\w*|injury workshop|physio(?:therapy)? room|rehab room|rehab pool|sick bay|first aid|verletzungsprophylaxe|verletzungspravention|erste hilfe|skadeforebyg\\w*|prevention des blessures|prevencion de lesiones|prevenzione (?:degli )?infortuni|blessurepreventie|hospital (?:road|street|lane|visit)|ill at ease");

    public static bool In(string text)
    {
        var folded = SpanToken.Fold(text);
        return Detail.IsMatch(Harmless.Replace(folded, " "));
    }
}
