using System.Globalization;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>
/// Days of birth of a list, decided together: what is written with strokes is day or month first as the whole column shows. A year in two
/// figures is the last such year in which a player can be born. What is no full day, no day at all or no player's is asked.
/// </summary>
/// <param name="Order">Null where nothing tells.</param>
internal sealed record BirthDates(IReadOnlyDictionary<int, (DateOnly? Day, string? Ask)> ByLine, DayOrder? Order)
{
    private const int YoungestPlayer = 4, OldestPlayer = 80;

    /// <summary>Numbers that are days of 1920 to 2050 as spreadsheets count them.</summary>
    private const int FirstSerial = 7306, LastSerial = 54789;

    public static BirthDates Read(IReadOnlyList<(SquadLine Line, string Name)> people, SquadOptions options, Asker asker)
    {
        var written = people.Where(person => !SquadColumns.IsNothing(person.Line.Born)).Select(person => (person.Line, person.Name, Written: Find(person.Line.Born))).ToList();
        var open = written.Where(born => born.Written is { First.Order: WrittenOrder.Open }).ToList();
        var swappable = open.Where(born => born.Written!.First.IsSwappable).ToList();
        var order = OrderOf([.. open.Select(born => born.Written!.First)]);
        string? askOrder = null;
        if (order is null && swappable.Count > 1 && swappable.Count == open.Count)
        {
            var asked = asker.Ask("born-order", "order", swappable.Select(born => born.Line.Line), [Asker.Option("born-order", "day-first"), Asker.Option("born-order", "month-first")], [swappable.Count],
                options.UsualOrder switch { DayOrder.DayFirst => "day-first", DayOrder.MonthFirst => "month-first", _ => null }, name: "Q-born");
            (order, askOrder) = (asked.Answer switch { "day-first" => DayOrder.DayFirst, "month-first" => DayOrder.MonthFirst, _ => null }, asked.IsOpen ? asked.Id : null);
        }
        // A whole column of years is one thing to know, not one of each person.
        var years = written.Where(born => born.Written is null && IsYear(born.Line.Born)).Select(born => born.Line.Line).ToList();
        var askYears = years.Count < 2 ? (Asked?)null : asker.Ask("born-years", "years", years, [Asker.Option("born-years", "empty")], [years.Count], "empty", name: "Q-born");
        return new(written.ToDictionary(born => born.Line.Line, Reading), order);

        (DateOnly? Day, string? Ask) Reading((SquadLine Line, string Name, WrittenDate? Written) born)
        {
            var text = born.Line.Born;
            if (Serial(text) is { } serial && IsPossible(serial, options.Today)) return AskSerial(born.Line.Line, text, serial, born.Name, asker);
            if (askYears is { } asked && years.Contains(born.Line.Line)) return (null, asked.IsOpen ? asked.Id : null);
            if (born.Written is not { } found) return AskDay(born.Line.Line, text, [], born.Name, options, asker);
            var waits = found.First.IsSwappable && order is null;
            if (waits && askOrder is not null) return (null, askOrder);
            var days = (waits ? [DayOrder.DayFirst, DayOrder.MonthFirst] : new[] { order ?? DayOrder.DayFirst }).Select(way => Day(found.First, text, way, options.Today)).OfType<DateOnly>().ToList();
            return !waits && days.Count == 1 ? (days[0], null) : AskDay(born.Line.Line, text, waits ? days : [], born.Name, options, asker);
        }
    }

    private static bool IsYear(string text) => text.Length == 4 && text.All(char.IsAsciiDigit);

    private static WrittenDate? Find(string text) => DateText.Find(text) is { Kind: WrittenKind.Day, Start: 0, LacksYear: false } date ? date : null;

    // A number above 12 is a day; a column that shows both orders shows none.
    private static DayOrder? OrderOf(List<WrittenDay> open) => (open.Exists(day => day.First > 12), open.Exists(day => day.Second > 12)) switch
    {
        (true, false) => DayOrder.DayFirst,
        (false, true) => DayOrder.MonthFirst,
        _ => null,
    };

    private static DateOnly? Day(WrittenDay written, string text, DayOrder order, DateOnly today)
    {
        var year = written.Year!.Value;
        // Two figures are read as 20xx.
        if (!text.Contains(year.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal) && year > today.Year - YoungestPlayer) year -= 100;
        return written.In(year, order) is { } day && IsPossible(day, today) ? day : null;
    }

    private static bool IsPossible(DateOnly day, DateOnly today) => day <= today.AddYears(-YoungestPlayer) && day >= today.AddYears(-OldestPlayer);

    private static DateOnly? Serial(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= FirstSerial and <= LastSerial && DaySerial.Read(number, from1904: false) is { } day ? DateOnly.FromDateTime(day) : null;

    private static (DateOnly?, string?) AskSerial(int line, string text, DateOnly day, string name, Asker asker)
    {
        var asked = asker.Ask("serial", $"{Spelling.Fold(name)}|{text}", [line], [Asker.Option("serial", "yes"), Asker.Option("serial", "no")], [name, text, day], "yes");
        return (asked.Answer == "no" ? null : day, asked.IsOpen ? asked.Id : null);
    }

    private static (DateOnly?, string?) AskDay(int line, string text, List<DateOnly> days, string name, SquadOptions options, Asker asker)
    {
        var asked = asker.Ask("born", $"{Spelling.Fold(name)}|{text}", [line], days.Select(day => new AnswerOption(Iso(day), Iso(day))), [name, text], takes: answer => Answered(answer) is not null);
        return (asked.Answer is { } said ? Answered(said) : null, asked.IsOpen ? asked.Id : null);

        DateOnly? Answered(string answer) => Find(answer.Trim()) is { } found && !found.First.IsSwappable && Day(found.First, answer, DayOrder.DayFirst, options.Today) is { } day ? day : null;
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
