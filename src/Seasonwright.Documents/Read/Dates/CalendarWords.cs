using System.Collections.Frozen;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>
/// Names of months and weekdays, whole and shortened, in the languages lists come in: English, German, French, Spanish, Italian,
/// Dutch, Danish, Norwegian, Swedish, Portuguese, Polish. From memory. Where two languages share a word the first one listed has it.
/// </summary>
public static class CalendarWords
{
    private static readonly FrozenDictionary<string, int> Months = Numbered(1,
        "january jan januar jänner janvier janv enero ene gennaio gen januari janeiro styczeń stycznia sty",
        "february feb febr februar feber février févr fevrier febrero febbraio februari fevereiro fev luty lutego",
        "march mar mär märz mrz maerz mars marzo maart mrt março marts marzec marca",
        "april apr avril avr abril abr aprile kwiecień kwietnia kwi",
        "may mai mayo maggio mag mei maj maio maja",
        "june jun juni juin junio giugno giu junho czerwiec czerwca",
        "july jul juli juillet juil julio luglio lug julho lipiec lipca",
        "august aug août aout agosto ago augustus augusti sierpień sierpnia",
        "september sep sept septembre septiembre settembre set setembro wrzesień września wrz",
        "october oct oktober okt octobre octubre ottobre ott outubro out październik października paź",
        "november nov novembre noviembre novembro listopad listopada",
        "december dec dezember dez décembre déc decembre diciembre dic dicembre desember des dezembro grudzień grudnia gru");

    private static readonly FrozenDictionary<string, int> Weekdays = Numbered(0,
        "sunday sun sonntag so dimanche dim domingo dom domenica zondag zo søndag søn söndag sön niedziela niedz",
        "monday mon montag mo lundi lun lunes lunedì lunedi maandag mandag man måndag mån seg poniedziałek pon pn",
        "tuesday tue tues dienstag di mardi martes martedì martedi dinsdag tirsdag tir tisdag tis wtorek wt",
        "wednesday wed weds mittwoch mi mercredi mer miércoles mié mie mercoledì woensdag wo onsdag ons qua środa śr",
        "thursday thu thur thurs donnerstag do jeudi jeu jueves jue giovedì gio donderdag torsdag tor tors qui czwartek czw",
        "friday fri freitag fr vendredi ven viernes vie venerdì vrijdag vr fredag fre piątek pt",
        "saturday sat samstag sa sonnabend samedi sam sábado sabado sáb sab sabato zaterdag za lørdag lør lördag lör sobota sob");

    /// <summary>Words for a week of the calendar.</summary>
    private static readonly FrozenSet<string> Weeks = "week wk kw woche kalenderwoche uge uke vecka v semaine sem settimana semana tydzień".Split(' ').ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>1 to 12, or null. A closing point may be there or not; case does not matter.</summary>
    public static int? Month(string word) => Months.TryGetValue(word.TrimEnd('.'), out var month) ? month : null;

    public static DayOfWeek? Weekday(string word) => Weekdays.TryGetValue(word.TrimEnd('.'), out var weekday) ? (DayOfWeek)weekday : null;

    public static bool IsWeek(string word) => Weeks.Contains(word);

    private static FrozenDictionary<string, int> Numbered(int first, params string[] lists) => lists
        .SelectMany((list, index) => list.Split(' ').Select(word => (word, number: index + first)))
        .DistinctBy(entry => entry.word, StringComparer.OrdinalIgnoreCase)
        .ToFrozenDictionary(entry => entry.word, entry => entry.number, StringComparer.OrdinalIgnoreCase);
}
