namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Formulas over the calendar, in functions that every spreadsheet has and gives the same meaning.</summary>
internal static class Formulas
{
    /// <summary>Names that formulas use.</summary>
    public const string FirstDay = "FirstDay";

    public const string LastDay = "LastDay";

    /// <summary>First days of the weeks, ascending.</summary>
    public const string WeekFirst = "WeekFirst";

    /// <summary>The short name of a day's weekday.</summary>
    public static string Weekday(string day) => $"CHOOSE(WEEKDAY({day},2),\"Mon\",\"Tue\",\"Wed\",\"Thu\",\"Fri\",\"Sat\",\"Sun\")";

    /// <summary>The last day of the week that holds the first day.</summary>
    /// <param name="weekStart">On which weekday weeks start.</param>
    public static string EndOfFirstWeek(DayOfWeek weekStart) =>
        // Weekdays from 1 for Monday to 7 for Sunday.
        FormattableString.Invariant($"{FirstDay}+6-MOD(WEEKDAY({FirstDay},2)-{(weekStart == DayOfWeek.Sunday ? 7 : (int)weekStart)},7)");

    /// <summary>The ISO week of most of a week's days: the days since the first of January of its Thursday, by weeks.</summary>
    public static string IsoWeek(string first, string last)
    {
        var middle = $"({first}+INT(({last}-{first})/2))";
        var thursday = $"({middle}+4-WEEKDAY({middle},2))";
        return $"INT(({thursday}-DATE(YEAR({thursday}),1,1))/7)+1";
    }

    /// <summary>The number of the week that holds a day, or the word for outside; nothing without a day.</summary>
    /// <param name="last">The thing's last day: it belongs to the week in which it is first met.</param>
    public static string WeekOf(string first, string last, string outside) =>
        $"IF({first}=\"\",\"\",IFERROR(IF(OR({last}<{FirstDay},{first}>{LastDay}),\"{outside}\",MATCH(IF({first}<{FirstDay},{FirstDay},{first}),{WeekFirst},1)),\"{outside}\"))";
}
