using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read;

/// <summary>
/// Health details of people, which belong into a private medical note, never into a plan that others see: the one judge for every list that is
/// read. Only plain words are known, in the languages of <see cref="Dates.CalendarWords"/>; the field's hint "no health details" stays needed.
/// Common practice, no source.
/// </summary>
internal static partial class HealthWords
{
    // Tell it by themselves, in whatever list.
    private static readonly Regex Plain = EventWords.Words(
        "injur\\w*|surgery|surgeries|operated|knee op|post-?op|acl|mcl|meniscus|concuss\\w*|fractur\\w*|broken (?:arm|leg|hand|finger|foot|ankle|wrist|rib|nose)|sprain\\w*|strain\\w*|ruptur\\w*|torn|dislocat\\w*|hamstring|groin|achilles|rehab|rehabilitation|physio(?:therapy)?|"
        + "mri|x-?ray|diagnos\\w*|medication|antibiotic\\w*|painkiller\\w*|inhaler|asthma\\w*|diabet\\w*|epilep\\w*|anaemi\\w*|anemi\\w*|pregnan\\w*|ill|illness|sick|sick leave|flu|covid|fever|glandular|depress\\w*|anxiety|eating disorder|allerg\\w*|hospital|"
        + "verletz\\w*|\\w*operation|operiert|kreuzband\\w*|gehirnerschutterung|bruch|gebrochen|knochenbruch|bander\\w*|muskelfaser\\w*|zerrung|reha|krank\\w*|grippe|fieber|schwanger\\w*|arzttermin|medikament\\w*|depression|allergie\\w*|"
        + "blesse\\w*|blessures?|commotion|entorse|malade|maladie|dechirure|enceinte|grossesse|reeducation|lesion\\w*|lesao|esguince|conmocion|enferm\\w*|embaraz\\w*|infortun\\w*|distorsione|frattura|stiramento|malat\\w*|crociato|incinta|gravidanza|"
        + "geblesseerd\\w*|hersenschudding|ziek\\w*|kruisband\\w*|gebroken|zwanger\\w*|revalid\\w*|skadet?|skadede|skadad|hjernerystelse|hjarnskakning|korsband\\w*|syk|sykmeldt?|sygemeldt|syg|sjuk\\w*|brukket|operert|opereret|opererad|gravid|forstuv\\w*|"
        + "kontuzj\\w*|uraz|wstrzas\\w*|zlaman\\w*|chor[ay]|choroba|operacj\\w*|ciaz[ay]"
        + "|back (?:pain|problem|trouble|spasm|strain)\\w*|\\w*schmerzen|kopf(?:weh|schmerz|verletz)\\w*");

    // Parts of the body. By themselves they may as well be a place or an exercise.
    private static readonly Regex Body = EventWords.Words(
        "(?:low|lower|upper|bad|sore|stiff) back|spine|disc|neck|shoulders?|elbows?|wrists?|collar ?bone|clavicle|ribs?|hips?|thigh|quads?|quadriceps|calf|calves|knees?|patella\\w*|ankles?|heel|shin|foot|feet|toes?|thumb|fingers?|jaw|nose|heart|"
        + "knie|knie(?:verletz|schmerz|prob|gelenk|schon)\\w*|knie-?ops?|schultern?|schulter(?:verletz|schmerz|prob|gelenk)\\w*|schulter-?ops?|sprunggelenk\\w*|knochel\\w*|rucken\\w*|huft\\w*|leiste\\w*|oberschenkel\\w*|wade\\w*|meniskus\\w*|handgelenk\\w*|ellbogen\\w*|finger\\w*|daumen\\w*|fuss\\w*|hals\\w*|wirbel\\w*|bandscheib\\w*|rippe\\w*|schlusselbein\\w*|"
        + "genoux?|chevilles?|epaules?|cuisse|mollet|aine|poignet|coude|rodillas?|tobillos?|hombros?|espalda|muslo|gemelo|ingle|muneca|codo|ginocchi[oa]?|caviglia|spalla|schiena|coscia|polpaccio|inguine|polso|gomito|"
        + "schouder\\w*|elleboog|kne|knae|skulder\\w*|axeln|axelskad\\w*|rygg|lysk\\w*|handled\\w*|albue\\w*|joelhos?|tornozelos?|ombros?|costas|coxa|virilha|kolan[oa]|kostk[ai]|plec[yo]w?|pachwin\\w*");

    // What is said of a part of the body that is not well: who saw it, how it feels, what it forbids.
    private static readonly Regex Complaint = EventWords.Words(
        "dr|doctor|doc|physician|physio\\w*|surgeon|medic|medics|medical\\w*|clinic|cleared|clearance|not cleared|return to play|rtp|pain\\w*|sore\\w*|niggle\\w*|swollen|swelling|ligament\\w*|cartilage|stress reaction|crutch\\w*|stitches|scan|op|ops|"
        + "out (?:until|till|for|indefinitely|of action)|no (?:running|jumping|contact|deadlifts?|squats?|squatting|lifting|overhead|impact|throwing)|doubtful|unfit|not fit|arzt\\w*|arztin|schmerz\\w*|attest|sportverbot|angeschlagen|kein (?:springen|laufen)|"
        + "medecin|docteur|kine|douleurs?|operee?|dolor\\w*|medico|medica|operad[oa]|lesionad[oa]|operat[oa]|dokter|pijn|geopereerd|lege|laege|lakare|smerte\\w*|smarta|dor(?:es)?|lekarz");

    // Beside a name these tell it too; of a hall or a day they are harmless.
    private static readonly Regex OfPerson = EventWords.Words(
        "stage \\d|hsr|protocol|stiff\\w*|tendon\\w*|tendin\\w*|shin splints|cast|brace|boot|recover\\w*|until further notice|modified|restricted|limited|unavailable|out|epi-?pen|coeliac|celiac|adhd|insulin|migraine\\w*|menstru\\w*|iron deficien\\w*|weight loss|underweight|overweight|"
        + "\\w*muskel\\w*|sehne\\w*|\\w*sehnen\\w*|ausfall|fallt aus|probleme|bis auf weiteres|dos|indisponible|baja|enkel\\w*|rug|lies|dij|kuit|pols|arts|blessure|kna|ryg|laar|lar|legg|laeg|bark|udo|bol");

    // Courses, rooms, streets and exercises that speak of health or of the body without telling anybody's.
    private static readonly Regex Harmless = EventWords.Words("injury prevention|prevention of injur\\w*|injury workshop|physio(?:therapy)? room|rehab room|rehab pool|sick bay|first aid|verletzungsprophylaxe|verletzungspravention|erste hilfe|skadeforebyg\\w*|prevention des blessures|prevencion de lesiones|prevenzione (?:degli )?infortuni|blessurepreventie|hospital (?:road|street|lane|visit)|ill at ease|(?:dr|doctor)\\.?-[\\w-]+");

    /// <summary>Whether words of a plan or a list tell of somebody's health: by themselves, or by a part of the body and what is said of it.</summary>
    public static bool In(string text) => Tells(text, folded =>
    {
        var plain = Harmless.Replace(folded, " ");
        return Plain.IsMatch(plain) || Body.IsMatch(plain) && Complaint.IsMatch(plain);
    });

    /// <summary>The same of words beside a person, where any part of the body, doctor or "out" tells it: it holds back too much rather than too little.</summary>
    public static bool BesidePerson(string text) => In(text) || Tells(text, folded => Body.IsMatch(folded) || Complaint.IsMatch(folded) || OfPerson.IsMatch(folded));

    // "38912verletzt": a figure ends no word.
    private static bool Tells(string text, Func<string, bool> tells) =>
        text.Length > 0 && (tells(SpanToken.Fold(text)) || Figures().Replace(text, " ${n} ") is var apart && apart != text && tells(SpanToken.Fold(apart)));

    [GeneratedRegex(@"(?<n>[\d_]+)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Figures();
}
