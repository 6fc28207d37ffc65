using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>What a number means by the format of its cell, and how it is shown.</summary>
internal sealed class NumberFormat
{
    private enum Meaning { Number, Day, Time, Span, Words }

    private readonly Meaning meaning;
    private readonly bool showsTime;

    // Positive, negative, zero, as far as the format has them.
    private readonly List<string> sections;

    private NumberFormat(Meaning meaning, bool showsTime, List<string> sections) => (this.meaning, this.showsTime, this.sections) = (meaning, showsTime, sections);

    public static NumberFormat General { get; } = Of("General");

    public static NumberFormat Of(string code)
    {
        var written = Sections(code);
        var (letters, elapsed) = Letters(written[0]);
        var (day, time) = (letters.Any(letter => letter is 'y' or 'd' or 'e' or 'g' or 'b') || letters.Contains('m') && !letters.Contains('h') && !letters.Contains('s'), letters.Any(letter => letter is 'h' or 's'));
        var says = elapsed ? Meaning.Span : day ? Meaning.Day : time ? Meaning.Time : code.Trim() == "@" ? Meaning.Words : Meaning.Number;
        return new(says, time, written);
    }

    /// <summary>Formats that workbooks name by number only (ISO/IEC 29500-1, 18.8.30; days and times of other languages too).</summary>
    public static NumberFormat BuiltIn(int id) => id switch
    {
        1 => Of("0"),
        2 => Of("0.00"),
        3 => Of("#,##0"),
        4 => Of("#,##0.00"),
        9 => Of("0%"),
        10 => Of("0.00%"),
        14 or 15 or 17 or 27 or 28 or 29 or 30 or 31 or 36 or (>= 50 and <= 54) or 57 or 58 => Of("d/m/y"),
        16 => Of("d-mmm"),
        (>= 18 and <= 21) or (>= 32 and <= 35) or 45 or 47 or 55 or 56 => Of("h:m:s"),
        22 => Of("m/d/yy h:mm"),
        46 => Of("[h]:mm:ss"),
        49 => Of("@"),
        _ => General,
    };

    /// <summary>The number's value and words. A day no calendar has (29 Feb 1900, which spreadsheets count) stays a number, shown as they show it.</summary>
    public (CellValue Value, string Text) Read(double number, bool from1904)
    {
        if (meaning == Meaning.Span && SpanOf(number) is { } length) return (new CellValue.Span(length), Said(length));
        if (meaning is Meaning.Time && number is > -1 and < 1 && Seconds(number) is >= 0 and < 86400 and var seconds) return TimeOf(seconds);
        if (meaning is Meaning.Day or Meaning.Time && number >= 0)
        {
            if (number < 1 && !from1904 && Seconds(number) is > 0 and < 86400 and var passed) return TimeOf(passed);
            if (!from1904 && Math.Floor(number) == 60) return (new CellValue.Number(number), "1900-02-29");
            if (DaySerial.Read(number, from1904) is { } at) return DayOf(at);
        }
        return (new CellValue.Number(number), Shown(number));
    }

    private (CellValue, string) DayOf(DateTime at)
    {
        var (day, time) = (DateOnly.FromDateTime(at), TimeOnly.FromDateTime(at));
        return showsTime || time != TimeOnly.MinValue ? (new CellValue.Day(day, time), $"{day:yyyy-MM-dd} {Said(time)}") : (new CellValue.Day(day, null), day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }

    private static (CellValue, string) TimeOf(long seconds) => TimeOnly.FromTimeSpan(TimeSpan.FromSeconds(seconds)) is var time ? (new CellValue.Time(time), Said(time)) : default;

    private static long Seconds(double days) => (long)Math.Round(days * 86400, MidpointRounding.AwayFromZero);

    private static TimeSpan? SpanOf(double days) => Math.Abs(days) < 10_000 ? TimeSpan.FromSeconds(Seconds(days)) : null;

    private static string Said(TimeOnly time) => time.ToString(time.Second == 0 ? "HH:mm" : "HH:mm:ss", CultureInfo.InvariantCulture);

    private static string Said(TimeSpan length) => string.Create(CultureInfo.InvariantCulture,
        $"{(length < TimeSpan.Zero ? "-" : "")}{(int)Math.Abs(length.TotalHours):0}:{Math.Abs(length.Minutes):00}{(length.Seconds == 0 ? "" : ":")}{(length.Seconds == 0 ? "" : Math.Abs(length.Seconds).ToString("00", CultureInfo.InvariantCulture))}");

    private string Shown(double number)
    {
        var section = number < 0 && sections.Count > 1 ? sections[1] : number == 0 && sections.Count > 2 ? sections[2] : sections[0];
        if (meaning != Meaning.Number || section.Trim().Equals("General", StringComparison.OrdinalIgnoreCase) || section.Contains('[', StringComparison.Ordinal) || section.Contains('/', StringComparison.Ordinal) || section.Contains('E', StringComparison.Ordinal)) return Plain(number);
        return Filled(section, number < 0 && sections.Count > 1 ? -number : number);
    }

    private static string Plain(double number) => number.ToString("G15", CultureInfo.InvariantCulture);

    // Literal text around one run of digit places; no thousands signs, so that the text is a number again.
    private static string Filled(string section, double number)
    {
        var (before, after, places, percent) = (new StringBuilder(), new StringBuilder(), new StringBuilder(), false);
        for (var i = 0; i < section.Length; i++)
        {
            var literal = places.Length == 0 ? before : after;
            switch (section[i])
            {
                case '"':
                    for (i++; i < section.Length && section[i] != '"'; i++) literal.Append(section[i]);
                    break;
                case '\\' when i + 1 < section.Length: literal.Append(section[++i]); break;
                case '_' or '*' when i + 1 < section.Length: i++; break;
                case '0' or '#' or '?' or '.': places.Append(section[i]); break;
                case ',': break;
                case '%': percent = true; literal.Append('%'); break;
                default: literal.Append(section[i]); break;
            }
        }
        if (places.Length == 0) return before.Length == 0 ? "" : before.ToString().Trim();
        var point = places.ToString().IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? "" : places.ToString()[(point + 1)..].Replace('?', '#').Replace(".", "", StringComparison.Ordinal);
        var whole = (point < 0 ? places.ToString() : places.ToString()[..point]).Replace('?', '#');
        var shown = (percent ? number * 100 : number).ToString($"{(whole.Length == 0 ? "#" : whole)}{(decimals.Length == 0 ? "" : "." + decimals)}", CultureInfo.InvariantCulture);
        return $"{before}{(shown.Length == 0 ? "0" : shown)}{after}".Trim();
    }

    private static List<string> Sections(string code)
    {
        var (sections, quoted) = (new List<string> { "" }, false);
        for (var i = 0; i < code.Length && i < 500; i++)
        {
            if (code[i] == '"') quoted = !quoted;
            if (code[i] == ';' && !quoted) sections.Add("");
            else if (code[i] == '\\' && !quoted && i + 1 < code.Length) sections[^1] += code.Substring(i++, 2);
            else sections[^1] += code[i];
        }
        return sections;
    }

    /// <summary>The letters that mean something, and whether hours, minutes or seconds count on past their end.</summary>
    private static (string Letters, bool Elapsed) Letters(string section)
    {
        if (section.Contains("General", StringComparison.OrdinalIgnoreCase)) return ("", false);
        var (letters, elapsed) = (new StringBuilder(), false);
        for (var i = 0; i < section.Length; i++)
        {
            if (section[i] == '"')
            {
                for (i++; i < section.Length && section[i] != '"'; i++) { }
            }
            else if (section[i] == '[')
            {
                var end = section.IndexOf(']', i);
                if (end < 0) break;
                var inside = section[(i + 1)..end];
                if (inside.Length > 0 && inside.ToLowerInvariant().All(letter => letter is 'h' or 'm' or 's')) elapsed = true;
                i = end;
            }
            else if (section[i] is '\\' or '_' or '*') i++;
            else if (section[i] is 'A' or 'a' && section.AsSpan(i).StartsWith("AM/PM", StringComparison.OrdinalIgnoreCase)) i += 4;
            else if (char.ToLowerInvariant(section[i]) is 'y' or 'm' or 'd' or 'h' or 's' or 'g' or 'b') letters.Append(char.ToLowerInvariant(section[i]));
            // "e" is a year of an era, "E+" an exponent.
            else if (section[i] == 'e' && (i + 1 == section.Length || section[i + 1] is not ('+' or '-'))) letters.Append('e');
        }
        return (letters.ToString(), elapsed);
    }
}
