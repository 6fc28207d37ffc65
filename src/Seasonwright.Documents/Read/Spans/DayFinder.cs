using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>Finds one day in tokens: ISO dates, figures with dots, slashes or hyphens, named months, days of the week.</summary>
/// <param name="whole">The text is a cell that should hold a date, so that bare figures may be one; a line of prose is read with more care.</param>
internal sealed class DayFinder(IReadOnlyList<SpanToken> tokens, bool whole)
{
    public SpanToken? At(int i) => i >= 0 && i < tokens.Count ? tokens[i] : null;

    public bool IsWord(int i, params ReadOnlySpan<string> words) => At(i) is { Kind: SpanTokenKind.Word } word && words.Contains(word.Text);

    public bool IsSign(int i, params ReadOnlySpan<string> signs) => At(i) is { Kind: SpanTokenKind.Sign } sign && signs.Contains(sign.Text);

    public bool IsNumber(int i) => At(i) is { Kind: SpanTokenKind.Number };

    /// <summary>A day and the place after it. Pieces may be missing only where the other end of a span can lend them.</summary>
    /// <param name="partial">Whether a bare day of the month or of the week will do.</param>
    public (DayPieces Day, int Next)? Day(int i, bool partial)
    {
        var start = i;
        DayOfWeek? weekday = null;
        if (Weekday(i) is { } before)
        {
            (weekday, i) = before;
            while (IsSign(i, ",") || IsWord(i, "den", "the", "le", "am", "dem")) i++;
        }
        if ((Iso(i) ?? Figures(i) ?? Named(i) ?? MonthFirst(i) ?? (partial ? Bare(i) : null)) is not var (day, next))
            return weekday is not null && partial ? (new DayPieces(null, null, null, weekday), AfterWeekday(start)) : null;
        if (weekday is null && TrailingWeekday(next) is var (after, end)) (weekday, next) = (after, end);
        return (day with { Weekday = weekday }, next);
    }

    /// <summary>A day of the week and the place after it and its dot.</summary>
    public (DayOfWeek, int)? Weekday(int i) =>
        At(i) is { } word && (SpanWords.Weekday(word) ?? (whole && (IsNumber(i + 1) || IsSign(i + 1, ".") && IsNumber(i + 2)) && SpanWords.Month(word) is null ? CalendarWords.Weekday(word.Raw) : null)) is { } day ? (day, AfterWeekday(i)) : null;

    /// <summary>A named month and the place after it and its dot.</summary>
    public (int Month, int Next)? Month(int i) =>
        At(i) is { } word && SpanWords.Month(word) is { } month ? (month, IsSign(i + 1, ".") && At(i + 1)!.Value.Spaced is false ? i + 2 : i + 1) : null;

    /// <summary>A year of four figures, or of two after an apostrophe, with a comma or an opening word before it.</summary>
    public (int Year, int Next)? Year(int i)
    {
        if (IsSign(i, ",") || IsWord(i, "of", "de", "del")) i++;
        // A year that no season can have is kept, so that the day is impossible and not another year's; in prose it may be a time ("1830").
        if (At(i) is { Kind: SpanTokenKind.Number, Length: 4 } four && (DayPieces.IsYear(four.Value) || whole || four.Value / 100 > 23 || four.Value % 100 > 59) && !IsTime(i)) return (four.Value, i + 1);
        return IsSign(i, "'") && At(i + 1) is { Kind: SpanTokenKind.Number, Length: 2, Spaced: false } two ? (2000 + two.Value, i + 2) : null;
    }

    /// <summary>A colon of a time ("14:00"), and not one that a title or a list ends with.</summary>
    public bool IsClock(int i) => IsSign(i, ":") && At(i + 1) is { Kind: SpanTokenKind.Number, Length: 2, Spaced: false };

    private bool IsTime(int i) => IsClock(i + 1) || IsWord(i + 1, "uhr", "h");

    private int AfterWeekday(int i) => IsSign(i + 1, ".") ? i + 2 : i + 1;

    // "12 Oct (Mon)", "12 Oct, Mon" - but not "5 Jan, Tue 6 Jan".
    private (DayOfWeek, int)? TrailingWeekday(int i)
    {
        var open = IsSign(i, "(", ",") ? 1 : 0;
        if (Weekday(i + open) is not var (day, next)) return null;
        if (IsNumber(next) || Month(next) is not null || (At(i + open)!.Value is { Length: < 3 } && open == 0 && !whole)) return null;
        if (IsSign(i, "(")) return IsSign(next, ")") ? (day, next + 1) : null;
        return (day, next);
    }

    // 2026-10-12, 2026/10/12, 2026.10.12 and, in a cell, 20261012.
    private (DayPieces, int)? Iso(int i)
    {
        if (At(i) is not { Kind: SpanTokenKind.Number } year) return null;
        if (year.Length == 4 && IsSign(i + 1, "-", "/", ".") && Close(i + 1) && Short(i + 2) is { } month && Close(i + 2)
            && IsSign(i + 3, At(i + 1)!.Value.Text) && Close(i + 3) && Short(i + 4) is { } day && Close(i + 4))
            return (new DayPieces(day, month, year.Value, null), i + 5);
        return whole && year.Length == 8 && DayPieces.IsYear(year.Value / 10000) ? (new DayPieces(year.Value % 100, year.Value / 100 % 100, year.Value / 10000, null), i + 1) : null;
    }

    private (DayPieces, int)? Figures(int i)
    {
        if (Short(i) is not { } a || !IsSign(i + 1, ".", "/", "-") || !Close(i + 1)) return null;
        var sign = At(i + 1)!.Value.Text;
        if (Short(i + 2) is not { } b || (sign != "." && !Close(i + 2)) || Month(i + 3) is not null) return null;
        // "13./14. März": the month comes later.
        if (sign == "." && Month(IsSign(i + 3, ".") ? i + 4 : i + 3) is not null) return null;

        if (IsSign(i + 3, sign) && (sign == "." || Close(i + 3)) && At(i + 4) is { Kind: SpanTokenKind.Number } y && (sign == "." ? !IsTime(i + 4) && (Close(i + 4) || y.Length == 4 || (y.Length == 2 && whole && At(i + 2)!.Value.Spaced)) : Close(i + 4)))
        {
            // "1.2.3" is no date of a sentence, and in a cell none that a calendar has: never another year's.
            if (y.Length is not (2 or 4) && !whole) return null;
            return (Ordered(a, b, y.Length switch { 4 => y.Value, 2 => 2000 + y.Value, _ => 0 }, sign), i + 5);
        }
        if (sign == "-") return null;
        if (sign == "/")
        {
            // "1/2 day", "3/4 of the squad" are shares.
            if (!whole && IsWord(i + 3, "of", "day", "days", "tag", "tage", "der", "h", "hour", "hours", "price")) return null;
            // "7/8 and 21/22 Nov": days of one month.
            if ((IsSign(i + 3, ",", "&", "+") || IsWord(i + 3, "and", "und")) && Short(i + 4) is not null && IsSign(i + 5, "/") && Short(i + 6) is not null && Month(i + 7) is not null) return null;
            return b <= 12 || a <= 12 ? (Ordered(a, b, Year(i + 3)?.Year, sign), Year(i + 3)?.Next ?? i + 3) : null;
        }
        var dotted = IsSign(i + 3, ".") && Close(i + 3);
        if (b > 12 || a > 31 || b < 1) return null;
        if (dotted) return (Ordered(a, b, Year(i + 4)?.Year, sign), Year(i + 4)?.Next ?? i + 4);
        // Without its last dot it may as well be a decimal or a time.
        return (whole || Weekday(i - 1) is not null || IsSign(i + 3, "-") || IsSign(i - 1, "-")) && Close(i + 2) && !IsWord(i + 3, "uhr", "h", "pm", "am", "km", "kg", "m")
            ? (Ordered(a, b, null, sign), i + 3) : null;
    }

    // 12 Oct, 12th of October 2026, 12. Oktober, 5-Oct-26.
    private (DayPieces, int)? Named(int i)
    {
        if (Short(i) is not { } day) return null;
        var next = AfterOrdinal(i);
        if (IsWord(next, "of", "de", "di")) next++;
        var hyphen = IsSign(next, "-", "/") && Close(next) && Close(next + 1);
        if (Month(hyphen ? next + 1 : next) is not var (month, end)) return null;
        if (hyphen && IsSign(end, "-", "/") && Close(end) && At(end + 1) is { Kind: SpanTokenKind.Number, Length: 2 or 4, Spaced: false } y && Month(end + 2) is null)
            return (new DayPieces(day, month, y.Length == 2 ? 2000 + y.Value : y.Value, null), end + 2);
        if (whole && At(end) is { Kind: SpanTokenKind.Number, Length: 2, Value: > 19 and < 50 } brief && (At(end + 1) is null || IsSign(end + 1, "-")))
            return (new DayPieces(day, month, 2000 + brief.Value, null), end + 1);
        return (new DayPieces(day, month, Year(end)?.Year, null), Year(end)?.Next ?? end);
    }

    // October 12, Oct 12th, 2026.
    private (DayPieces, int)? MonthFirst(int i)
    {
        if (Month(i) is not var (month, next)) return null;
        if (IsWord(next, "the")) next++;
        if (Short(next) is not { } day || day > 31 || IsClock(next + 1) || IsWord(next + 1, "am", "pm", "uhr")) return null;
        next = AfterOrdinal(next);
        return (new DayPieces(day, month, Year(next)?.Year, null), Year(next)?.Next ?? next);
    }

    private (DayPieces, int)? Bare(int i) =>
        Short(i) is { } day and >= 1 and <= 31 && !IsClock(i + 1) && !(IsSign(i - 1, ":", "+") && Close(i)) && !IsWord(i + 1, "am", "pm", "uhr", "h") ? (new DayPieces(day, null, null, null), AfterOrdinal(i)) : null;

    /// <summary>The place after a number and its dot or ordinal letters.</summary>
    public int AfterOrdinal(int i)
    {
        if (IsSign(i + 1, ".") && Close(i + 1)) return i + 2;
        return IsWord(i + 1, "st", "nd", "rd", "th", "er", "e") && Close(i + 1) || IsSign(i + 1, "º", "ª", "°") ? i + 2 : i + 1;
    }

    private static DayPieces Ordered(int a, int b, int? year, string sign) => sign == "." ? new(a, b, year, null)
        : a > 12 ? new(a, b, year, null, FigureOrder.DayFirst)
        : b > 12 ? new(b, a, year, null, FigureOrder.MonthFirst)
        : new(a, b, year, null, a == b ? FigureOrder.Told : FigureOrder.Either);

    private int? Short(int i) => At(i) is { Kind: SpanTokenKind.Number, Length: <= 2 } number ? number.Value : null;

    private bool Close(int i) => At(i) is { Spaced: false };
}
