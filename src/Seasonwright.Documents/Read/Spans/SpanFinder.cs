using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Spans;

/// <summary>Finds spans of days in a text; see <see cref="DaySpanText"/> for what people write.</summary>
internal sealed class SpanFinder
{
    private static readonly string[] Joiners = ["to", "bis", "till", "til", "until", "through", "thru", "au", "al", "tot", "do"];
    private static readonly string[] Starts = ["from", "ab", "von", "vom", "du", "dal", "del", "starting", "starts", "start", "begin", "begins", "beginning", "beginnt", "beginn", "since", "seit", "opens"];
    private static readonly string[] Ends = ["until", "till", "til", "bis", "through", "ends", "ending", "endet"];
    private static readonly string[] WeekWords = ["kw", "week", "weeks", "wk", "wks", "w", "woche", "wochen", "kalenderwoche", "kalenderwochen", "cw", "semaine", "semana", "settimana", "uke", "uge", "vecka"];
    private static readonly string[] CalendarWeeks = ["kw", "kalenderwoche", "kalenderwochen", "cw", "uke", "uge", "vecka"];
    private static readonly string[] InWords = ["in", "of", "during", "im", "within", "wahrend", "en", "de", "di", "i", "w"];
    private static readonly string[] Vague = ["around", "about", "approx", "ca", "circa", "probably", "provisional", "provisionally", "tbc", "tba", "ungefahr", "etwa", "vorauss", "voraussichtlich", "vorlaufig", "wohl"];

    private readonly string text;
    private readonly bool whole;
    private readonly List<SpanToken> tokens;
    private readonly DayFinder at;
    private readonly PartFinder parts;

    /// <param name="whole">The text is a cell that should hold a date.</param>
    public SpanFinder(string text, bool whole)
    {
        (this.text, this.whole, tokens) = (text, whole, SpanToken.Split(text));
        at = new DayFinder(tokens, whole);
        parts = new PartFinder(at);
    }

    public DayFinder Days => at;

    public IReadOnlyList<SpanToken> Tokens => tokens;

    /// <summary>Every span, in the order of the text; none overlap.</summary>
    public List<FoundSpan> Spans()
    {
        var found = new List<FoundSpan>();
        for (var i = 0; i < tokens.Count;)
        {
            if (i > 0 && !tokens[i].Spaced && tokens[i].Kind == SpanTokenKind.Number && tokens[i - 1].Kind is SpanTokenKind.Number or SpanTokenKind.Word) i++;
            else if (Span(i) is var (span, next))
            {
                found.Add(span);
                i = next;
            }
            else i++;
        }
        return found;
    }

    /// <summary>The first part of the day that stands outside a span: "half day on 3 Nov", "pm, Mon 4 Jan".</summary>
    public PartOfDay? PartOutside(FoundSpan? span)
    {
        for (var i = 0; i < tokens.Count; i++)
            if ((span is null || tokens[i].End <= span.At || tokens[i].At >= span.End) && parts.Part(i) is var (part, _)) return part;
        return null;
    }

    /// <summary>The part of the day that the whole text names.</summary>
    public PartOfDay? PartAlone() => parts.Part(0) is var (part, next) && next == tokens.Count ? part : null;

    /// <summary>The first day of the week named without a date; short names are too often other words.</summary>
    public (DayOfWeek Day, int At, int End)? WeekdayAlone()
    {
        foreach (var token in tokens.Where(token => token.Length > 2))
            if ((SpanWords.Weekday(token) ?? SpanWords.EveryWeekday(token)) is { } day) return (day, token.At, token.End);
        return null;
    }

    private (FoundSpan Span, int Next)? Span(int i)
    {
        var tentative = at.IsWord(i, Vague);
        var start = i;
        if (tentative) i = at.IsSign(i + 1, ".") ? i + 2 : i + 1;
        if ((Nth(i) ?? Every(i) ?? Weeks(i) ?? WeekOf(i) ?? Twins(i) ?? Between(i) ?? Opens(i) ?? Closes(i) ?? List(i) ?? DayToDay(i) ?? Months(i)) is not { } piece) return null;
        var next = piece.Next;
        if (at.IsWord(next, "inclusive", "inkl", "einschliesslich", "incl")) next++;
        else if (at.IsSign(next, "(") && at.IsWord(next + 1, "inclusive", "inkl", "incl") && at.IsSign(next + 2, ")")) next += 3;
        while (at.IsSign(next, "?") || (at.IsSign(next, "(") && at.IsSign(next + 1, "?") && at.IsSign(next + 2, ")")) || at.IsWord(next, "tbc", "tba")
            || (at.IsSign(next, "(") && at.IsWord(next + 1, Vague) && at.IsSign(next + 2, ")")))
        {
            tentative = true;
            next += at.IsSign(next, "(") ? 3 : 1;
        }
        return (new FoundSpan(piece.Form, tokens[start].At, tokens[next - 1].End, piece.First, piece.Last, piece.Each, tentative), next);
    }

    private sealed record Piece(SpanForm Form, int Next, PartOfDay? First = null, PartOfDay? Last = null, PartOfDay? Each = null);

    // "21 Aug", "Fri 21 - Sun 23 Aug", "Thu 25 Mar (from noon) - Mon 29 Mar", "20 Dec to 2 Jan", "3 March, two weeks".
    private Piece? DayToDay(int i, bool between = false)
    {
        if (at.IsWord(i, "am", "on", "den") && at.Day(i + 1, false) is not null) i++;
        if (at.Day(i, true) is not var (first, afterFirst)) return null;
        var part = parts.Part(afterFirst);
        var join = part?.Next ?? afterFirst;
        // A stroke between two whole dates is ISO 8601's way to write a span.
        var stroke = first.Year is not null && at.IsSign(join, "/") && at.Day(join + 1, false)?.Day.Year is not null;
        if ((IsJoiner(join) || stroke || (between && at.IsWord(join, "and", "und"))) && at.Day(AfterFiller(join), true) is var (last, end) && Fit(first, last, i))
        {
            // "February 15 - 19, 2027": the year stands behind a day without a month.
            if (last is { Month: null, Day: not null } && at.Year(end) is var (year, afterYear)) (last, end) = (last with { Year = year }, afterYear);
            return At(new DaysForm(first, last), end, part?.Part);
        }
        if (first.Day is null || first.Month is null) return null;
        // "1 January -", "14 Aug - tbc"
        if (at.IsSign(join, "-", "..") && (at.At(join + 1) is null || at.IsWord(join + 1, "tbc", "tba", "open", "offen") || at.IsSign(join + 1, "?"))) return new Piece(new OpenForm(new DaysForm(first, null), true), join + (at.At(join + 1) is null ? 1 : 2), part?.Part);
        if (UntilFurtherNotice(join) is { } afterNotice) return new Piece(new OpenForm(new DaysForm(first, null), true), afterNotice, part?.Part);
        if (Length(afterFirst) is var (days, afterLength)) return new Piece(new LengthForm(first, days), afterLength);
        return new Piece(new DaysForm(first, null), join, Each: part?.Part);
    }

    // "1 July until further notice", "ab 1.7. bis auf weiteres", "1 July onwards".
    private int? UntilFurtherNotice(int i) => at.IsWord(i, "until", "till", "bis") && at.IsWord(i + 1, "further", "auf") && at.IsWord(i + 2, "notice", "weiteres") ? i + 3 : at.IsWord(i, "onwards", "onward") ? i + 1 : null;

    private Piece At(SpanForm form, int end, PartOfDay? first)
    {
        var last = parts.Part(end);
        // "12 - 14 Oct pm" is each afternoon; beside a part of the first day, or with "until", it is the last day's.
        var ends = last is not null && (first is not null || last.Value.Part.Side == PartSide.Closes);
        return new Piece(form, last?.Next ?? end, first, ends ? last!.Value.Part : null, ends ? null : last?.Part);
    }

    // Whether two pieces can be the ends of one span: between them they name a month, and figures alone are no span of a sentence.
    private static bool Fit(DayPieces first, DayPieces last, int i)
    {
        if (first.Day is null && last.Day is null) return false;
        if (first.Month is null && last.Month is null) return false;
        return first.Day is not null || first.Weekday is not null || i == 0;
    }

    // "Fri-Sun, 21-23 Aug", "Sat/Sun 7/8 Nov": both days of the week first, then both dates.
    private Piece? Twins(int i)
    {
        if (at.Weekday(i) is not var (one, next) || !(IsJoiner(next) || at.IsSign(next, "/", "+", "&")) || at.Weekday(next + 1) is not var (other, then)) return null;
        while (at.IsSign(then, ",", ":")) then++;
        if (at.Weekday(then) is not null) return null;
        return (List(then) ?? DayToDay(then)) switch
        {
            { Form: DaysForm { Last: { } last } days } piece => piece with { Form = new DaysForm(days.First with { Weekday = one }, last with { Weekday = other }) },
            { Form: ListForm { Listed.Count: 2 } list } piece => piece with { Form = new DaysForm(list.Listed[0] with { Weekday = one, Month = list.Listed[0].Month ?? list.Listed[1].Month }, list.Listed[1] with { Weekday = other }) },
            // "Fri - Sun 23 Aug": the one date is the last day.
            { Form: DaysForm { Last: null } day } piece => piece with { Form = new DaysForm(new DayPieces(null, null, null, one), day.First with { Weekday = other }) },
            { } piece => piece,
            null => null,
        };
    }

    private Piece? Between(int i) =>
        at.IsWord(i, "between", "zwischen") && DayToDay(AfterFiller(i), between: true) is { Form: DaysForm { Last: not null } } piece ? piece : null;

    // "from 6 Jul", "begins 10 May", "ab 12.10.", "from 12 Oct to 14 Oct".
    private Piece? Opens(int i)
    {
        if (!at.IsWord(i, Starts)) return null;
        if (at.IsWord(i, "beginning", "beginn", "start", "begin") && at.IsWord(i + 1, "of", "des")) return null;
        // "Term starts: 2 September" is the day of that name.
        if (at.IsSign(i + 1, ":") && !at.IsWord(i, "from", "ab", "von", "vom")) return null;
        var next = AfterFiller(i);
        if (at.IsWord(next, "mid", "early", "late") || (Weeks(next) ?? List(next) ?? DayToDay(next) ?? Months(next)) is not { } piece) return null;
        if (piece.Form is DaysForm { Last: not null } or LengthForm or ListForm or WeeksForm || piece.Form is MonthsForm { First: var a, Last: var b } && a != b) return piece;
        return piece with { Form = new OpenForm(piece.Form, true), First = piece.Each, Each = null };
    }

    private Piece? Closes(int i)
    {
        if (!at.IsWord(i, Ends) || at.IsSign(i + 1, ":") && at.IsWord(i, "ends", "ending", "endet") || (DayToDay(AfterFiller(i)) ?? Months(AfterFiller(i))) is not { } piece) return null;
        return piece.Form is DaysForm { Last: null } or MonthsForm ? piece with { Form = new OpenForm(piece.Form, false), Last = piece.Each, Each = null } : null;
    }

    // "14 and 21 Oct", "3, 10 and 17 March", "21/22 Oct", "7. + 8.11.".
    private Piece? List(int i)
    {
        var days = new List<DayPieces>();
        var (next, joinedByWord) = (i, false);
        while (at.Day(next, true) is var (day, end))
        {
            if (day.Day is null) return null;
            days.Add(day);
            next = end;
            if (day.Month is not null && !(IsListSign(end) && !(day.Year is not null && at.IsSign(end, "/")) && at.Day(end + 1, true) is var (more, _) && more.Day is not null && more.Month is not null && day.Order == more.Order)) break;
            if (!IsListSign(end)) return null;
            joinedByWord = !at.IsSign(end, ",", "/");
            next = end + (at.IsSign(end, ",") && at.IsWord(end + 1, "and", "und", "&") ? 2 : 1);
        }
        if (days.Count < 2 || days[^1].Month is null || days.Any(day => day.Weekday is not null && days.Count > 2)) return null;
        for (var d = days.Count - 2; d >= 0; d--)
            days[d] = days[d] with { Month = days[d].Month ?? days[d + 1].Month };
        var part = parts.Part(next);
        // "Sat 24 and Sun 25 April" are one span, and their days of the week are looked at.
        if (days.Any(day => day.Weekday is not null))
            return joinedByWord && days[0].Month == days[1].Month && days[1].Day == days[0].Day + 1 ? new Piece(new DaysForm(days[0], days[1]), part?.Next ?? next, Each: part?.Part) : joinedByWord ? new Piece(new ListForm(days.ToValueList()), part?.Next ?? next, Each: part?.Part) : null;
        return new Piece(new ListForm(days.ToValueList()), part?.Next ?? next, Each: part?.Part);
    }

    private bool IsListSign(int i) => at.IsSign(i, "/", "&", "+", ",") || at.IsWord(i, "and", "und", "et", "y", "e", "or", "og", "och", "en", "i", "u", "o", "ou");

    // "KW 42", "KW 49-50", "week 43", "weeks 43 to 44", "W43", "2026-W43".
    private Piece? Weeks(int i)
    {
        var calendar = false;
        int? year = null;
        if (at.At(i) is { Kind: SpanTokenKind.Number, Length: 4 } four && DayPieces.IsYear(four.Value) && at.IsSign(i + 1, "-") && at.At(i + 2) is { Kind: SpanTokenKind.Word, Spaced: false })
            (year, i, calendar) = (four.Value, i + 2, true);
        if (at.IsWord(i, "calendar", "iso")) (i, calendar) = (i + 1, true);
        if (at.At(i) is not { Kind: SpanTokenKind.Word } word) return null;
        int first;
        if (WeekWords.Contains(word.Text) && at.At(at.IsSign(i + 1, ".") ? i + 2 : i + 1) is { Kind: SpanTokenKind.Number, Length: <= 2 } number)
            (first, i) = (number.Value, at.IsSign(i + 1, ".") ? i + 3 : i + 2);
        else if (word.Text.AsSpan().TrimEnd("0123456789") is { Length: > 0 } stem && WeekWords.Contains(stem.ToString()) && word.Text.Length - stem.Length is 1 or 2)
            (first, i) = (int.Parse(word.Text.AsSpan(stem.Length), System.Globalization.CultureInfo.InvariantCulture), i + 1);
        else return null;
        calendar |= CalendarWeeks.Contains(word.Text.TrimEnd("0123456789".ToCharArray())) || (word.Text[0] == 'w' && year is not null);
        var last = first;
        if ((IsJoiner(i) || at.IsSign(i, "/", "&", "+")) && at.At(at.IsWord(i + 1, WeekWords) ? i + 2 : i + 1) is { Kind: SpanTokenKind.Number, Length: <= 2 } other
            && at.Day(i + 1, false) is null && !at.IsClock(at.IsWord(i + 1, WeekWords) ? i + 3 : i + 2))
        {
            // "KW 42/26" is a week of 2026.
            if (at.IsSign(i, "/") && other.Value < first && other.Value > 19) year = 2000 + other.Value;
            else last = other.Value;
            i = at.IsWord(i + 1, WeekWords) ? i + 3 : i + 2;
        }
        if (year is null && (at.IsSign(i, "/") || at.IsWord(i, "in")) && at.Year(i + 1) is var (slashed, afterSlash)) (year, i) = (slashed, afterSlash);
        else if (year is null && at.Year(i) is var (plain, after)) (year, i) = (plain, after);
        var part = parts.Part(i);
        return new Piece(new WeeksForm(first, last, year, calendar), part?.Next ?? i, Each: part?.Part);
    }

    // "week of 12 Oct", "w/c 12 Oct", "week commencing Monday 12 October", "Woche vom 12.10.", "weekend of 7 Nov".
    private Piece? WeekOf(int i)
    {
        var weekend = at.IsWord(i, "weekend", "wochenende");
        int next;
        if ((at.IsWord(i, "w") && at.IsSign(i + 1, "/") && at.IsWord(i + 2, "c", "b", "e"))) next = i + 3;
        else if (at.IsWord(i, "wc", "wb")) next = i + 1;
        else if ((at.IsWord(i, "week", "woche") || weekend) && at.IsWord(i + 1, "of", "commencing", "beginning", "starting", "vom", "ab", "from", "im")) next = i + 2;
        else if (weekend) next = i + 1;
        else return null;
        if (at.IsWord(next, "the")) next++;
        if (weekend && (List(next) ?? DayToDay(next)) is { Form: ListForm or DaysForm { Last: not null } } piece) return piece;
        return at.Day(next, false) is var (day, end) ? new Piece(new WeekOfForm(day, weekend), end) : null;
    }

    // "every Wednesday p.m. in March", "Wednesdays 3-31 March", "jeden Mittwoch im März", "mittwochs".
    private Piece? Every(int i)
    {
        var some = false;
        DayOfWeek weekday;
        var all = at.IsWord(i, "tous", "todos", "tutti") && at.IsWord(i + 1, "les", "los", "i");
        if (all || at.IsWord(i, "every", "each", "jeden", "jede", "jeder", "chaque", "cada", "ogni", "elke", "hver", "varje", "kazdy", "kazda"))
        {
            i += all ? 2 : 1;
            if (at.IsWord(i, "other", "second", "zweiten", "2nd", "alternate") || (at.IsNumber(i) && at.At(i)!.Value.Value == 2)) (some, i) = (true, i + 1);
            while (at.IsWord(i, "nd")) i++;
            if (at.At(i) is { Kind: SpanTokenKind.Word } plural && SpanWords.EveryWeekday(plural) is { } days) (weekday, i) = (days, i + 1);
            else if (at.Weekday(i) is var (day, next)) (weekday, i) = (day, next);
            else return null;
        }
        else if (at.At(at.IsWord(i, "on", "all") ? i + 1 : i) is { Kind: SpanTokenKind.Word } plural && SpanWords.EveryWeekday(plural) is { } days)
            (weekday, i) = (days, at.IsWord(i, "on", "all") ? i + 2 : i + 1);
        else return null;
        var part = parts.Part(i);
        i = part?.Next ?? i;
        if (at.IsWord(i, InWords)) i++;
        while (at.IsSign(i, ",", ":")) i++;
        var within = Opens(i) ?? DayToDay(i) ?? Weeks(i) ?? Months(i, free: true);
        var form = within?.Form is DaysForm { Last: null } ? null : within?.Form;
        var after = form is null ? i : within!.Next;
        part ??= parts.Part(after) is { } late && form is not null ? (late.Part, after = late.Next) : null;
        return new Piece(new EveryForm(weekday, form, some), after, Each: part?.Part);
    }

    // "second Saturday in May", "letzter Freitag im Juni".
    private Piece? Nth(int i)
    {
        var nth = at.At(i) switch
        {
            { Text: "first" or "erster" or "ersten" } => 1,
            { Text: "second" or "zweiter" or "zweiten" } => 2,
            { Text: "third" or "dritter" or "dritten" } => 3,
            { Text: "fourth" or "vierter" or "vierten" } => 4,
            { Text: "last" or "letzter" or "letzten" } => 5,
            { Kind: SpanTokenKind.Number, Length: 1, Value: >= 1 and <= 4 } figure => figure.Value,
            _ => 0,
        };
        if (at.IsNumber(i)) i = at.AfterOrdinal(i) - 1;
        if (nth == 0 || at.Weekday(i + 1) is not var (day, next) || !at.IsWord(next, InWords) || at.Month(next + 1) is not var (month, end)) return null;
        return new Piece(new NthDayForm(nth, day, month, at.Year(end)?.Year), at.Year(end)?.Next ?? end);
    }

    // "May", "May 2027", "in March", "mid-June", "Anfang Mai", "May - June".
    private Piece? Months(int i, bool free = false)
    {
        var opened = free;
        if (at.IsWord(i, InWords) || at.IsWord(i, "all", "whole", "ganzer")) (i, opened) = (i + 1, true);
        if (at.IsWord(i, "of")) i++;
        int? third = at.At(i) is { Kind: SpanTokenKind.Word } word ? word.Text switch
        {
            "early" or "anfang" or "beginning" or "start" => 1,
            "mid" or "mitte" or "middle" => 2,
            "late" or "end" or "ende" => 3,
            _ => null,
        } : null;
        if (third is not null)
        {
            i++;
            while (at.IsSign(i, "-") || at.IsWord(i, "of", "des")) i++;
            opened = true;
        }
        if (at.Month(i) is not var (first, next)) return null;
        // "training may be short", "they march in": in a line of prose a month stands with a capital and after a word that opens it.
        if (!whole && !((tokens[i].IsCapital || free) && (opened || i == tokens.Count - 1 || at.IsSign(i - 1, ":", ",", "-") || at.Year(next) is not null))) return null;
        if (at.At(next) is { Kind: SpanTokenKind.Number, Length: <= 2 } && at.Year(next) is null) return null;
        var last = first;
        var year = at.Year(next);
        if ((IsJoiner(year?.Next ?? next) || at.IsSign(year?.Next ?? next, "/")) && at.Month((year?.Next ?? next) + 1) is var (other, end))
        {
            var lastYear = at.Year(end);
            // A year after the last month is that month's; the first month's follows from it.
            var firstYear = year?.Year ?? (lastYear is { } y ? other < first ? y.Year - 1 : y.Year : null);
            return new Piece(new MonthsForm(first, other, firstYear, null), lastYear?.Next ?? end);
        }
        return new Piece(new MonthsForm(first, last, year?.Year, third), year?.Next ?? next);
    }

    // ", two weeks", "for 10 days", "(3 days)".
    private (int Days, int Next)? Length(int i)
    {
        var start = i;
        while (at.IsSign(i, ",", "(") || at.IsWord(i, "for", "fur")) i++;
        if (i == start) return null;
        int? count = at.At(i) switch
        {
            { Kind: SpanTokenKind.Number, Length: <= 2 } number => number.Value,
            { Kind: SpanTokenKind.Word, Text: "one" or "a" or "eine" or "ein" or "einen" } => 1,
            { Kind: SpanTokenKind.Word, Text: "two" or "zwei" } => 2,
            { Kind: SpanTokenKind.Word, Text: "three" or "drei" } => 3,
            { Kind: SpanTokenKind.Word, Text: "four" or "vier" } => 4,
            _ => null,
        };
        if (count is not (>= 1 and <= 60)) return null;
        int? unit = at.IsWord(i + 1, "week", "weeks", "woche", "wochen") ? 7 : at.IsWord(i + 1, "day", "days", "tag", "tage") ? 1 : null;
        return unit is { } days ? (count.Value * days, at.IsSign(i + 2, ")") ? i + 3 : i + 2) : null;
    }

    private bool IsJoiner(int i) => at.IsSign(i, "-", "..") || at.IsWord(i, Joiners) || IsUpToAndWith(i) || (at.IsSign(i, ",") && at.IsWord(i + 1, "to", "bis", "until"));

    // Dutch "t/m".
    private bool IsUpToAndWith(int i) => at.IsWord(i, "t") && at.IsSign(i + 1, "/") && at.IsWord(i + 2, "m");

    private int AfterFiller(int i)
    {
        if (IsUpToAndWith(i)) i += 2;
        if (at.IsSign(i, ",")) i++;
        i++;
        while (at.IsWord(i, "the", "zum", "dem", "den", "on", "am", "incl", "inclusive", "including", "inkl", "einschl", "einschliesslich") || at.IsSign(i, ":") || at.IsSign(i, ".") && at.IsWord(i - 1, "incl", "inkl", "einschl")) i++;
        return i;
    }
}
