using System.Collections.Frozen;

namespace Seasonwright.Documents.Read.Dates;

/// <summary>
/// Names of months and weekdays, whole and shortened, in the languages lists come in: English, German, French, Spanish, Italian,
/// Dutch, Danish, Norwegian, Swedish, Portuguese. From memory. Where two languages share a word the first one listed has it.
/// </summary>
public static class CalendarWords
{
    private static readonly FrozenDictionary<string, int> Months = Numbered(1,
        "january jan januar jänner janvier janv enero ene gennaio gen januari janeiro",
        "february feb febr februar feber février févr fevrier febrero febbraio februari fevereiro fev",
        "march mar mär märz mrz maerz mars marzo maart mrt março marts",
        "april apr avril avr abril abr aprile",
        "may mai mayo maggio mag mei maj maio",
        "june jun juni juin junio giugno giu junho",
        "july jul juli juillet juil julio luglio lug julho",
        "august aug août aout agosto ago augustus augusti",
        "september sep sept septembre septiembre settembre set setembro",
        "october oct oktober okt octobre octubre ottobre ott outubro out",
        "november nov novembre noviembre novembro",
        "december dec dezember dez décembre déc decembre diciembre dic dicembre desember des dezembro");

    private static readonly FrozenDictionary<string, int> Weekdays = Numbered(0,
        "sunday sun sonntag so dimanche dim domingo dom domenica zondag zo søndag søn söndag sön",
        "monday mon montag mo lundi lun lunes lunedì lunedi maandag mandag man måndag mån seg",
        "tuesday tue tues dienstag di mardi martes martedì martedi dinsdag tirsdag tir tisdag tis",
        "wednesday wed weds mittwoch mi mercredi mer miércoles mié mie mercoledì woensdag wo onsdag ons qua",
        "thursday thu thur thurs donnerstag do jeudi jeu jueves jue giovedì gio donderdag torsdag tor tors qui",
        "friday fri freitag fr vendredi ven viernes vie venerdì vrijdag vr fredag fre",
        "saturday sat samstag sa sonnabend samedi sam sábado sabado sáb sab sabato zaterdag za lørdag lør lördag lör");

    /// <summary>Words for a week of the calendar.</summary>
    private static readonly FrozenSet<string> Weeks = "week wk kw woche kalenderwoche uge uke vecka v semaine sem settimana semana".Split(' ').ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>1 to 12, or null. A closing point may be there or not; case does not matter.</summary>
    public static int? Month(string word) => Months.TryGetValue(word.TrimEnd('.'), out var month) ? month : null;

    public static DayOfWeek? Weekday(string word) => Weekdays.TryGetValue(word.TrimEnd('.'), out var weekday) ? (DayOfWeek)weekday : null;

    public static bool IsWeek(string word) => Weeks.Contains(word);

    private static FrozenDictionary<string, int> Numbered(int first, params string[] lists) => lists
        .SelectMany((list, index) => list.Split(' ').Select(word => (word, number: index + first)))
        .DistinctBy(entry => entry.word, StringComparer.OrdinalIgnoreCase)
        .ToFrozenDictionary(entry => entry.word, entry => entry.number, StringComparer.OrdinalIgnoreCase);
}
