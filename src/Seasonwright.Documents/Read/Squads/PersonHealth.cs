using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>
/// Whether words beside a person tell of that person's health. Beside a name, parts of the body, doctors, pain and "out until" tell it,
/// which in a plan would be harmless; it holds back too much rather than too little. Common practice, no source.
/// </summary>
internal static partial class PersonHealth
{
    private static readonly Regex Detail = EventWords.Words(
        "(?:low|lower|upper|bad|sore|stiff) back|spine|disc|neck|shoulders?|elbows?|wrists?|collar ?bone|clavicle|ribs?|hips?|groin|thigh|quads?|quadriceps|calf|calves|knees?|patella\\w*|ankles?|heel|shin|foot|feet|toes?|thumb|fingers?|jaw|nose|heart|back (?:pain|problem|trouble|spasm|strain)\\w*|"
        + "dr|doctor|doc|physician|physio\\w*|surgeon|medic|medics|medical\\w*|clinic|cleared|clearance|not cleared|return to play|rtp|stage \\d|hsr|protocol|pain\\w*|sore\\w*|niggle\\w*|swollen|swelling|stiff\\w*|tendon\\w*|tendin\\w*|ligament\\w*|cartilage|stress reaction|shin splints|cast|crutch\\w*|brace|boot|stitches|scan|op|ops|recover\\w*|"
        + "out (?:until|till|for|indefinitely|of action)|until further notice|no (?:running|jumping|contact|deadlifts?|squats?|squatting|lifting|overhead|impact|throwing)|modified|restricted|limited|doubtful|unfit|not fit|unavailable|out|epi-?pen|coeliac|celiac|adhd|insulin|heart|migraine\\w*|menstru\\w*|iron deficien\\w*|weight loss|underweight|overweight|"
        + "knie|knie(?:verletz|schmerz|prob|gelenk|schon)\\w*|knie-?ops?|schultern?|schulter(?:verletz|schmerz|prob|gelenk)\\w*|schulter-?ops?|sprunggelenk\\w*|knochel\\w*|rucken\\w*|huft\\w*|leiste\\w*|oberschenkel\\w*|wade\\w*|\\w*muskel\\w*|sehne\\w*|\\w*sehnen\\w*|meniskus\\w*|handgelenk\\w*|ellbogen\\w*|finger\\w*|daumen\\w*|fuss\\w*|kopf(?:weh|schmerz|verletz)\\w*|hals\\w*|wirbel\\w*|bandscheib\\w*|rippe\\w*|schlusselbein\\w*|arzt\\w*|arztin|schmerz\\w*|\\w*schmerzen|attest|ausfall|fallt aus|sportverbot|angeschlagen|probleme|physio\\w*|kein (?:springen|laufen)|bis auf weiteres|"
        + "genoux?|chevilles?|epaules?|dos|cuisse|mollet|aine|poignet|coude|medecin|docteur|kine|douleurs?|operee?|indisponible|rodillas?|tobillos?|hombros?|espalda|muslo|gemelo|ingle|muneca|codo|medico|medica|dolor\\w*|operad[oa]|lesionad[oa]|baja|ginocchi[oa]?|caviglia|spalla|schiena|coscia|polpaccio|inguine|polso|gomito|dolor[ei]|operat[oa]|"
        + "enkel\\w*|schouder\\w*|rug|lies|dij|kuit|pols|elleboog|arts|dokter|pijn|blessure|geopereerd|kne|knae|kna|skulder\\w*|axeln|axelskad\\w*|rygg|ryg|lysk\\w*|laar|lar|legg|laeg|handled\\w*|albue\\w*|lege|laege|lakare|smerte\\w*|smarta|joelhos?|tornozelos?|ombros?|costas|coxa|virilha|dor(?:es)?|kolan[oa]|kostk[ai]|bark|plec[yo]w?|udo|pachwin\\w*|lekarz|bol");

    // "ok", "fit": how available somebody is, which staff set in the program and no list does.
    private static readonly Regex Availability = EventWords.Words("ok|okay|fit|available|active|aktiv|healthy|full|yes|y|ja|oui|si|frisk|klar|ready|bereit|all good|good|no issues|none|keine|dispo|disponible|verfugbar");

    private static readonly Regex Absent = EventWords.Words("injured(?: list)?|injuries|out|unavailable|not available|absent|missing|sick|ill|long[- ]term|rehab|verletzte?|krank|fehlt|fehlen|nicht dabei|ausfall|ausfalle|blessee?s?|indisponibles?|absents?|lesionad[oa]s?|bajas?|infortunat[ie]|indisponibili|assenti|geblesseerd|afwezig|skadede?|skadet|skadade|kontuzjowan\\w*");

    public static bool In(string text)
    {
        // "38912verletzt": a figure ends no word.
        var apart = Figures().Replace(text, " ${n} ");
        return text.Length > 0 && (HealthWords.In(text) || Detail.IsMatch(SpanToken.Fold(text)) || apart != text && (HealthWords.In(apart) || Detail.IsMatch(SpanToken.Fold(apart))));
    }

    /// <summary>The whole text says only that somebody is available.</summary>
    public static bool IsAvailability(string text) => Whole(Availability, text);

    /// <summary>The whole text says that those named behind it are out.</summary>
    public static bool IsAbsence(string text) => Whole(Absent, text);

    private static bool Whole(Regex words, string text)
    {
        var folded = SpanToken.Fold(text).Trim(' ', '.', '!', ':', '-');
        return folded.Length > 0 && words.Match(folded) is { Success: true } match && match.Length == folded.Length;
    }

    [GeneratedRegex(@"(?<n>[\d_]+)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Figures();
}
