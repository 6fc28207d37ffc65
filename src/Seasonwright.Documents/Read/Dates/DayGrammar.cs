namespace Seasonwright.Documents.Read.Dates;

/// <summary>Reads one written day from a run of tokens.</summary>
internal sealed class DayGrammar(List<Token> tokens)
{
    private static readonly string[] Ordinals = ["st", "nd", "rd", "th", "er", "e", "º", "ª"];

    private static readonly string[] Links = ["of", "de", "di", "du", "d", "den", "the"];

    /// <summary>A token; one without text before the first and behind the last.</summary>
    public Token At(int i) => i >= 0 && i < tokens.Count ? tokens[i] : new Token("", 0, Spaced: true);

    public int Count => tokens.Count;

    /// <summary>The day that begins at a token, with a weekday in front or not; null if none does.</summary>
    public (WrittenDay Day, int Next)? Day(int i)
    {
        var (weekday, at) = Weekday(i);
        if (Iso(at) is { } iso) return (iso.Day with { Weekday = weekday }, iso.Next);
        if (Numbers(at) is { } numbers) return (numbers.Day with { Weekday = weekday }, numbers.Next);
        if (DayThenMonth(at) is { } named) return (named.Day with { Weekday = weekday }, named.Next);
        if (MonthThenDay(at) is { } turned) return (turned.Day with { Weekday = weekday }, turned.Next);
        return null;
    }

    /// <summary>A weekday ("Sat", "So.,", "Sat/Sun") in front, and where it ends.</summary>
    public (DayOfWeek? Weekday, int Next) Weekday(int i)
    {
        if (!At(i).IsWord || CalendarWords.Weekday(At(i).Text) is not { } weekday) return (null, i);
        var at = i + 1;
        if (At(at).Text is ".") at++;
        if (At(at).Text is "/" or "-" or "–" or "&" && CalendarWords.Weekday(At(at + 1).Text) is not null) return (null, at + 2);
        if (At(at).Text is "," or ":") at++;
        if (At(at).IsWord && Links.Contains(At(at).Text, StringComparer.OrdinalIgnoreCase)) at++;
        return (weekday, at);
    }

    /// <summary>A day of the month, with a point or ordinal letters or not.</summary>
    public (int Day, int Next)? Ordinal(int i)
    {
        if (At(i) is not { IsNumber: true, Text.Length: <= 2, Number: >= 1 and <= 31 } number) return null;
        var at = i + 1;
        if (At(at) is { Text: ".", Spaced: false }) at++;
        else if (At(at) is { IsWord: true, Spaced: false } letters && Ordinals.Contains(letters.Text, StringComparer.OrdinalIgnoreCase)) at++;
        return (number.Number, at);
    }

    /// <summary>A year of four figures where a year may stand, or of two behind an apostrophe or plainly no time.</summary>
    public (int Year, int Next)? Year(int i)
    {
        var at = At(i).Text is "," || At(i) is { Text: "-" or "/", Spaced: false } && !At(i + 1).Spaced ? i + 1 : i;
        if (At(at).IsWord && Links.Contains(At(at).Text, StringComparer.OrdinalIgnoreCase)) at++;
        if (At(at) is { IsNumber: true, Text.Length: 4, Number: >= 1900 and <= 2199 } year) return (year.Number, at + 1);
        if (At(at).Text is "'" or "’" && At(at + 1) is { IsNumber: true, Text.Length: 2 } marked) return (2000 + marked.Number, at + 2);
        if (At(at) is { IsNumber: true, Text.Length: 2 } two && !IsClock(at) && At(i).Text is not "/") return (2000 + two.Number, at + 1);
        return null;
    }

    // A number with these behind it is a time of day: "4 Sep 19.30", "4 Sep 19 Uhr".
    private bool IsClock(int i) => At(i + 1).Text is ":" || At(i + 1) is { Text: "." or "," } && At(i + 2) is { IsNumber: true, Spaced: false }
        || At(i + 1) is { IsWord: true } word && word.Text.ToUpperInvariant() is "H" or "UHR" or "AM" or "PM" or "A" or "P" or "HRS" or "KL";

    private (WrittenDay Day, int Next)? Iso(int i)
    {
        if (At(i) is { Text.Length: 8, Number: >= 19000101 and <= 21991231 } run) return Known(run.Number / 10000, run.Number / 100 % 100, run.Number % 100, i + 1);
        if (At(i) is not { IsNumber: true, Text.Length: 4 } year || At(i + 1).Text is not ("-" or "/" or ".")) return null;
        return At(i + 2) is { IsNumber: true, Text.Length: <= 2 } month && At(i + 3).Text == At(i + 1).Text && At(i + 4) is { IsNumber: true, Text.Length: <= 2 } day
            ? Known(year.Number, month.Number, day.Number, i + 5) : null;
    }

    private static (WrittenDay Day, int Next)? Known(int year, int month, int day, int next) =>
        month is >= 1 and <= 12 && day is >= 1 and <= 31 ? (new WrittenDay(day, month, year, WrittenOrder.Known), next) : null;

    private (WrittenDay Day, int Next)? Numbers(int i)
    {
        if (At(i) is not { IsNumber: true, Text.Length: <= 2 } one || At(i + 1).Text is not ("/" or "." or "-") || At(i + 2) is not { IsNumber: true, Text.Length: <= 2 } two) return null;
        var mark = At(i + 1).Text;
        var order = mark == "." ? WrittenOrder.Points : WrittenOrder.Open;
        var possible = one.Number is >= 1 and <= 31 && two.Number is >= 1 and <= 31 && (one.Number <= 12 || two.Number <= 12);
        if (!possible) return null;
        if (At(i + 3).Text == mark && At(i + 4) is { IsNumber: true } year && (year.Text.Length == 4 || year is { Text.Length: 2, Spaced: false } && !IsClock(i + 4)))
            return (new WrittenDay(one.Number, two.Number, year.Text.Length == 4 ? year.Number : 2000 + year.Number, order), i + 5);
        if (mark == "." && At(i + 3) is { Text: ".", Spaced: false } && two.Number <= 12) return (new WrittenDay(one.Number, two.Number, null, order), i + 4);
        // "19/20 September", "5/6.9.2026": two days of one month, not a day and a month.
        var isPair = At(i + 3).IsWord && CalendarWords.Month(At(i + 3).Text) is not null || At(i + 3).Text is "." or "/" or "-" && At(i + 4) is { IsNumber: true, Spaced: false };
        return mark == "/" && !isPair && !two.Spaced ? (new WrittenDay(one.Number, two.Number, null, order), i + 3) : null;
    }

    private (WrittenDay Day, int Next)? DayThenMonth(int i)
    {
        if (Ordinal(i) is not { } day) return null;
        var at = At(day.Next).Text is "-" or "/" || At(day.Next).IsWord && Links.Contains(At(day.Next).Text, StringComparer.OrdinalIgnoreCase) ? day.Next + 1 : day.Next;
        if (!At(at).IsWord || CalendarWords.Month(At(at).Text) is not { } month) return null;
        var next = At(at + 1) is { Text: ".", Spaced: false } ? at + 2 : at + 1;
        var year = Year(next);
        return (new WrittenDay(day.Day, month, year?.Year, WrittenOrder.Known), year?.Next ?? next);
    }

    private (WrittenDay Day, int Next)? MonthThenDay(int i)
    {
        if (!At(i).IsWord || CalendarWords.Month(At(i).Text) is not { } month) return null;
        var at = At(i + 1) is { Text: ".", Spaced: false } ? i + 2 : i + 1;
        if (IsClock(at) || Ordinal(at) is not { } day) return null;
        var year = At(day.Next).Text is "-" ? null : Year(day.Next);
        return (new WrittenDay(day.Day, month, year?.Year, WrittenOrder.Known), year?.Next ?? day.Next);
    }
}
