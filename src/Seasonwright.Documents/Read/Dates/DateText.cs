namespace Seasonwright.Documents.Read.Dates;

/// <summary>Finds written dates in a text: days, spans, alternatives, weeks and months.</summary>
public static class DateText
{
    /// <summary>Longer texts are searched only so far.</summary>
    public const int LongestText = 400;

    private static readonly string[] Until = ["-", "–", "—", "→", "to", "bis", "until", "till", "til", "through", "thru", "au", "al", "tot", "hasta", "do"];

    private static readonly string[] Or = ["/", "&", "+", "or", "oder", "ou", "eller", "and", "und", "et", "og", "och", "y", "e", "u", "o", "en", "i", "lub"];

    /// <summary>The first date at or after a character, or null.</summary>
    /// <param name="months">Whether a month without a day ("May") counts as a date.</param>
    public static WrittenDate? Find(string text, int from = 0, bool months = false)
    {
        var searched = text.Length > LongestText ? text[..LongestText] : text;
        var grammar = new DayGrammar(Token.Cut(searched));
        for (var i = 0; i < grammar.Count; i++)
        {
            if (grammar.At(i).Start < from) continue;
            if (grammar.At(i) is { IsNumber: true } && grammar.At(i - 1).Text is ":" && !grammar.At(i).Spaced) continue;
            if (At(grammar, i, months) is { } found) return found;
        }
        return null;
    }

    /// <summary>All dates of a text, in order, apart from each other.</summary>
    public static IEnumerable<WrittenDate> FindAll(string text, bool months = false)
    {
        for (var date = Find(text, 0, months); date is not null; date = Find(text, date.End, months)) yield return date;
    }

    /// <summary>The text without a date found in it, tidied: what stood before and behind, with a space between.</summary>
    public static string Without(string text, WrittenDate date) => Spelling.Tidy($"{text[..date.Start]} {text[Math.Min(date.End, text.Length)..]}");

    private static WrittenDate? At(DayGrammar grammar, int i, bool months) =>
        WeekOf(grammar, i) ?? Weeks(grammar, i) ?? Days(grammar, i) ?? DaysOfOneMonth(grammar, i) ?? (months ? Month(grammar, i) : null);

    private static WrittenDate Made(DayGrammar grammar, int from, int next, WrittenKind kind, WrittenDay first, WrittenDay? last = null) =>
        new(grammar.At(from).Start, grammar.At(next - 1).End, kind, first, last);

    // "6 Dec", "20 Dec - 2 Jan", "2028-04-22 or 2028-04-23", "Sep 5-7"
    private static WrittenDate? Days(DayGrammar grammar, int i)
    {
        if (grammar.Day(i) is not { } first) return null;
        if (Join(grammar, first.Next) is { } join)
        {
            if (grammar.Day(join.Next) is { } last) return Made(grammar, i, last.Next, join.Kind, first.Day, last.Day);
            // "Sep 5-7, 2026": the month stood in front and holds for both.
            if (first.Day.Order == WrittenOrder.Known && first.Day.Year is null && grammar.Ordinal(join.Next) is { } day && grammar.At(join.Next + 1).Text is not (":" or "."))
            {
                var year = grammar.Year(day.Next);
                return Made(grammar, i, year?.Next ?? day.Next, join.Kind, first.Day with { Year = year?.Year }, new WrittenDay(day.Day, first.Day.Second, year?.Year, WrittenOrder.Known));
            }
        }
        return Made(grammar, i, first.Next, WrittenKind.Day, first.Day);
    }

    // "19/20 September 2026", "1-5 March", "Fri 21 - Sun 23 Aug", "19./20.9.2026"
    private static WrittenDate? DaysOfOneMonth(DayGrammar grammar, int i)
    {
        var (weekday, at) = grammar.Weekday(i);
        if (grammar.Ordinal(at) is not { } day || Join(grammar, day.Next) is not { } join || grammar.Day(join.Next) is not { } last) return null;
        if (last.Day.Order == WrittenOrder.Open || last.Day.First is null) return null;
        var first = new WrittenDay(day.Day, last.Day.Second, last.Day.Year, last.Day.Order, weekday);
        return Made(grammar, i, last.Next, join.Kind, first, last.Day);
    }

    // "week of 6 Dec", "w/c 6 Dec", "Woche vom 6.12."
    private static WrittenDate? WeekOf(DayGrammar grammar, int i)
    {
        int at;
        if (grammar.At(i).Is("w") && grammar.At(i + 1).Text is "/" && grammar.At(i + 2).Text.ToUpperInvariant() is "C" or "B" or "E" && !grammar.At(i + 2).Is("e")) at = i + 3;
        else if (grammar.At(i) is { IsWord: true } week && CalendarWords.IsWeek(week.Text) && grammar.At(i + 1).IsWord) at = i + 2;
        else return null;
        for (var skipped = 0; skipped < 2 && grammar.At(at).IsWord && grammar.Day(at) is null; skipped++) at++;
        return grammar.Day(at) is { } day ? Made(grammar, i, day.Next, WrittenKind.WeekOf, day.Day) : null;
    }

    // "week 43", "KW 49-50", "KW 43/2026"
    private static WrittenDate? Weeks(DayGrammar grammar, int i)
    {
        if (!grammar.At(i).IsWord || !CalendarWords.IsWeek(grammar.At(i).Text)) return null;
        var at = grammar.At(i + 1).Text is "." or "#" ? i + 2 : i + 1;
        if (grammar.At(at) is not { IsNumber: true, Text.Length: <= 2, Number: >= 1 and <= 53 } first) return null;
        var (next, lastWeek) = (at + 1, (int?)null);
        if (grammar.At(next) is { Text: "-" or "–" or "/" or "&" } && grammar.At(next + 1) is { IsNumber: true, Text.Length: <= 2, Number: >= 1 and <= 53 } last)
            (next, lastWeek) = (next + 2, last.Number);
        var year = grammar.At(next).Text is "/" && grammar.At(next + 1) is { IsNumber: true, Text.Length: 4 } ? grammar.Year(next + 1) : grammar.Year(next);
        if (year is { } found && grammar.At(found.Next - 1).Text.Length == 4) next = found.Next;
        else year = null;
        return new WrittenDate(grammar.At(i).Start, grammar.At(next - 1).End, WrittenKind.Weeks, Week: first.Number, LastWeek: lastWeek, WeekYear: year?.Year);
    }

    private static WrittenDate? Month(DayGrammar grammar, int i)
    {
        if (!grammar.At(i).IsWord || CalendarWords.Month(grammar.At(i).Text) is not { } month) return null;
        var year = grammar.Year(i + 1);
        return Made(grammar, i, year?.Next ?? i + 1, WrittenKind.Month, new WrittenDay(null, month, year?.Year, WrittenOrder.Known));
    }

    private static (WrittenKind Kind, int Next)? Join(DayGrammar grammar, int i)
    {
        var word = grammar.At(i).Text;
        if (word is "-" or "=" && grammar.At(i + 1).Text is ">") return (WrittenKind.Span, i + 2);
        if (word is "t" && grammar.At(i + 1).Text is "/" && grammar.At(i + 2).Is("m")) return (WrittenKind.Span, i + 3);
        if (Until.Contains(word, StringComparer.OrdinalIgnoreCase)) return (WrittenKind.Span, i + 1);
        return Or.Contains(word, StringComparer.OrdinalIgnoreCase) ? (WrittenKind.Either, i + 1) : null;
    }
}
