using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Names of the usual lifts, in the languages of <see cref="Dates.CalendarWords"/>. From memory. What a gym means by "clean" or "row" is the coach's to say.</summary>
internal static class Exercises
{
    // The more exact name first: a "front squat" is a squat too.
    private static readonly (string Exercise, Regex Words)[] Names =
    [
        Named("front squat", "front ?squats?|frontkniebeuge\\w*|squat (?:avant|devant)|sentadilla frontal|frontb[oj]+y?|fsq?"),
        Named("overhead squat", "overhead squats?|ohs"),
        Named("split squat", "(?:bulgarian |rear foot elevated )?split ?squats?|rfess|ausfallschritt\\w*|lunges?|fentes?"),
        Named("clean and jerk", "(?:power )?clean (?:and|&|\\+) jerk|c&j|stossen|umsetzen (?:und|&|\\+) (?:aus)?stossen|epaule-? ?jete|dos tiempos|slancio|stot|podrzut"),
        Named("power clean", "power ?cleans?|stand-? ?umsetzen|power umsetzen|epaule debout|pcl?"),
        Named("hang clean", "hang (?:power )?cleans?|hang-? ?umsetzen"),
        Named("clean", "(?:squat )?cleans?|umsetzen|epaule|cargada|girata|voorslaan|frivend\\w*|frivand\\w*|vending|zarzut"),
        Named("power snatch", "power snatch|standreissen"),
        Named("snatch", "snatch|reissen|arrache|arrancada|arranque|strappo|rykk?|ryck|trekken|rwanie|arranco"),
        Named("push press", "push ?press|schwungdrucken"),
        Named("jerk", "(?:push |split )?jerk|ausstossen"),
        Named("romanian deadlift", "romanian dead ?lifts?|rdls?|rumanisches kreuzheben"),
        Named("trap bar deadlift", "trap ?-?bar(?: dead ?lifts?)?|hex ?-?bar(?: dead ?lifts?)?"),
        Named("deadlift", "dead ?-?lifts?|kreuzheben|souleve de terre|sdt|peso muerto|stacco(?: da terra)?|markloft|marklyft|dodloft|dodlift|martwy ciag|levantamento terra|deadlifts?|dl"),
        Named("hip thrust", "(?:barbell )?hip thrusts?|beckenheben"),
        Named("leg press", "leg press|beinpresse|presse a cuisses|prensa de piernas|beenpers|benpress|beinpress"),
        Named("incline bench press", "incline (?:bench|press|bench press)|schragbank\\w*"),
        Named("bench pull", "bench pulls?|prone rows?|bankziehen|seal rows?|tirage planche"),
        Named("bench press", "bench(?: ?press)?|flat bench|bankdrucken|bank|developpe couche|press(?: de)? banc[ao]|panca(?: piana)?|bankdrukken|benke?press?|baenkpres|bankpress?|supino|wyciskanie(?: lezac)?|bp"),
        Named("overhead press", "over ?head press|ohp|military press|shoulder press|strict press|schulterdrucken|uberkopfdrucken|developpe militaire|press militar|militarpress?|ohp"),
        Named("pull-up", "(?:weighted )?(?:pull|chin)-? ?ups?|klimmzug\\w*|tractions?|dominadas?|trazioni|optrekken|kropshaevning\\w*|chins"),
        Named("row", "(?:barbell |bent over |pendlay )?rows?|rudern|rowing|remo|rematore"),
        Named("back squat", "(?:back ?|box |high bar |low bar )?squats?|(?:tiefe |nacken)?kniebeugen?|kb|sentadillas?|kneboy|knebojning?|kneb[oj]+|knaboj|przysiad\\w*|agachamento|bsq?|sq"),
    ];

    /// <summary>The usual name, if the whole text is one of a lift's; null otherwise.</summary>
    public static string? Of(string text)
    {
        var folded = SpanToken.Fold(text).Trim(' ', '.', ':', '-');
        if (folded.Length is 0 or > 40) return null;
        foreach (var (exercise, words) in Names)
            if (words.IsMatch(folded)) return exercise;
        return null;
    }

    private static (string, Regex) Named(string exercise, string words) => (exercise, new($"^(?:{words})$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant));
}
