namespace Seasonwright.Documents.Read.Times;

/// <summary>Reads a time of day as people write it: 19:30, 19.30, 1930, 7:30 PM, 7pm, 18h, 18h30, 11 Uhr, kl. 19, noon, TBD.</summary>
public static class TimeText
{
    private static readonly HashSet<string> UnknownWords = new(
        ("tbd|tba|tbc|t.b.d.|t.b.a.|t.b.c.|tbd.|tba.|tbc.|offen|open|noch offen|unbekannt|noch unbekannt|unknown|n/a|na|-|–|—|?|??|???|folgt|follows|n.n.|nn|to be confirmed|to be announced|to be decided|to be fixed"
        + "|à confirmer|à définir|à préciser|a definir|por definir|por determinar|por confirmar|a confirmar|pendiente|da definire|da def|da def.|da stabilire|da confermare|nog onbekend|n.t.b.|ntb|nog te bepalen|nader te bepalen|ikke fastsat|ikke satt|ikke fastsatt|ikke bestemt|afventer|följer|ej fastställd|ej satt|do ustalenia|do potwierdzenia|k.a.|ka|keine angabe|time tbc|time tbd|time tba|zeit offen").Split('|'), StringComparer.Ordinal);

    private static readonly HashSet<string> Noon = new(["noon", "midday", "mittag", "mittags", "midi", "mediodía", "mezzogiorno", "południe", "middag", "12 noon", "12:00 noon"], StringComparer.Ordinal);

    /// <summary>Whether a cell says that something is not known yet ("TBD", "tbc", "offen", "?").</summary>
    public static bool IsUnknown(string cell) => UnknownWords.Contains(Spelling.Fold(cell));

    /// <summary>Reads a whole cell.</summary>
    public static TimeReading Read(string cell)
    {
        var text = Spelling.Fold(cell);
        if (text.Length == 0) return new(TimeSense.Empty);
        if (IsUnknown(text)) return new(TimeSense.Unknown);
        if (Noon.Contains(text)) return new(TimeSense.Known, new TimeOnly(12, 0));
        var signed = text[0] is '+' or '-' or '=' && text.Length > 1;
        if (signed) text = text[1..].TrimStart();
        var doubtful = text.Contains('?', StringComparison.Ordinal) || text.StartsWith("ca", StringComparison.Ordinal) || text.StartsWith('~') || text.StartsWith("about ", StringComparison.Ordinal);
        text = text.Replace("?", "", StringComparison.Ordinal).Replace("ca.", "", StringComparison.Ordinal).TrimStart('~').Trim();
        foreach (var word in new[] { "ca ", "about ", "ab ", "um ", "at ", "from ", "kl. ", "kl ", "à " })
            if (text.StartsWith(word, StringComparison.Ordinal)) text = text[word.Length..];
        if (text.StartsWith('(') && text.EndsWith(')')) text = text[1..^1];
        // A formula with a reference in it ("=A1") is no time with a sign.
        if (HalfFromEnd(text) is { } span) return new(doubtful ? TimeSense.Doubtful : TimeSense.Known, span.Start, span.End, signed);
        if (Clock(text) is not { } clock) return new(TimeSense.Unreadable);
        var end = Span(text[clock.Used..]);
        if (end is null && text[clock.Used..].Trim().Length > 0) return new(TimeSense.Unreadable);
        // Programs write 0:00 or 24:00 where a time is missing.
        if (end is null && !clock.JustAfterMidnight && clock.Time == TimeOnly.MinValue) return new(TimeSense.Midnight, clock.Time, Signed: signed);
        return new(doubtful ? TimeSense.Doubtful : clock.JustAfterMidnight ? TimeSense.JustAfterMidnight : TimeSense.Known, clock.Time, end, signed);
    }

    // "3-4pm": the first figure has its half of the day from the second.
    private static (TimeOnly Start, TimeOnly End)? HalfFromEnd(string text)
    {
        var at = 0;
        if (Figures(text, ref at) is not { Length: <= 2, Value: >= 1 and <= 12 } first || Span(text[at..]) is not { } end || !text.EndsWith('m')) return null;
        var start = new TimeOnly(first.Value % 12, 0);
        return (start.AddHours(12) < end ? start.AddHours(12) : start, end);
    }

    // "-19:30", "– 19:30", "to 7 pm"
    private static TimeOnly? Span(string rest)
    {
        var text = rest.Trim();
        foreach (var join in new[] { "-", "–", "—", "to ", "bis ", "until " })
            if (text.StartsWith(join, StringComparison.Ordinal) && Clock(text[join.Length..].Trim()) is { } end && end.Used == text[join.Length..].Trim().Length) return end.Time;
        return null;
    }

    /// <summary>A clock time at the start of a lower-case text, and how many characters it takes.</summary>
    private static (TimeOnly Time, int Used, bool JustAfterMidnight)? Clock(string text)
    {
        var at = 0;
        if (Figures(text, ref at) is not { } first) return null;
        var (hour, minute, marked) = (first.Value, 0, false);
        if (first.Length == 4) (hour, minute, marked) = (first.Value / 100, first.Value % 100, true);
        else if (first.Length > 2) return null;
        else if (at < text.Length && text[at] is ':' or '.' or 'h' or '’' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))
        {
            var mark = at++;
            if (Figures(text, ref at) is not { Length: 2 } minutes) return null;
            (minute, marked) = (minutes.Value, true);
            // Seconds, as programs write them.
            if (text[mark] == ':' && at + 2 < text.Length && text[at] == ':' && char.IsAsciiDigit(text[at + 1]))
            {
                at++;
                if (Figures(text, ref at) is not { Length: 2 }) return null;
            }
        }
        var half = Word(text, ref at);
        var justAfterMidnight = half is "am" && hour == 12;
        if (half is "am" or "pm")
        {
            if (hour is < 1 or > 12) return null;
            hour = hour % 12 + (half == "pm" ? 12 : 0);
        }
        // A bare number is no time: "7" may be anything.
        else if (half.Length == 0 && !marked) return null;
        if (hour == 24 && minute == 0 && half is not ("am" or "pm")) hour = 0;
        return hour <= 23 && minute <= 59 ? (new TimeOnly(hour, minute), at, justAfterMidnight) : null;
    }

    private static (int Value, int Length)? Figures(string text, ref int at)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return at - start is >= 1 and <= 4 ? (int.Parse(text.AsSpan(start, at - start), provider: System.Globalization.CultureInfo.InvariantCulture), at - start) : null;
    }

    // "am" and "pm" in any writing, or a word for o'clock; anything else is left where it is.
    private static string Word(string text, ref int at)
    {
        var rest = text[at..];
        var lead = rest.Length - rest.TrimStart().Length;
        rest = rest.TrimStart();
        foreach (var (written, meant) in new[] { ("a.m.", "am"), ("p.m.", "pm"), ("am", "am"), ("pm", "pm"), ("a", "am"), ("p", "pm"), ("uhr", "h"), ("hrs", "h"), ("hours", "h"), ("h", "h"), ("o'clock", "h"), ("noon", "pm") })
        {
            if (!rest.StartsWith(written, StringComparison.Ordinal) || rest.Length > written.Length && char.IsLetter(rest[written.Length])) continue;
            at += lead + written.Length;
            return meant;
        }
        return "";
    }
}
