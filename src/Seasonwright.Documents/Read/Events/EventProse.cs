using System.Text.RegularExpressions;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Events from lines of prose: a title with days beside it, remarks in brackets, more days behind. A line of days alone takes its title from the line above.</summary>
internal static class EventProse
{
    private static readonly Regex Bullet = new(@"^\s*(?:[*•·–+-]|\[ ?\]|\d{1,2}\))\s*", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);
    private static readonly Regex Brackets = new(@"\((?<in>[^()]*)\)", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);
    private static readonly string[] Links = ["leave", "leaves", "leaving", "depart", "departs", "departing", "on", "is", "are", "will", "be", "am", "at", "the", "vom", "von", "from", "ab", "und", "and", "then", "also", "again", "or", "sowie", "dann", "auch", "&", "+", "plus", "à", "partir", "du", "le", "les", "il", "dal", "el", "desde", "fra", "från", "vanaf", "den"];

    public static IEnumerable<EventLine> Lines(SourceText source, List<Skipped> skipped)
    {
        var started = false;
        Skipped? heading = null;
        for (var i = 0; i < source.Lines.Count; i++)
        {
            var raw = source.Lines[i];
            var text = Spelling.Tidy(raw);
            var bullet = Bullet.Match(text);
            var body = text[bullet.Length..];
            var spans = Spans(body);
            var isKnown = EventWords.Of(WithoutSpans(body, spans)) is not (EventKind.Other, false);
            Skipped? skip = null;
            if (text.Length == 0) skip = Skipped.Of(i + 1, raw, "blank-line");
            else if (spans.Count == 0 && !(isKnown && (bullet.Length > 0 || IsEntry(text)))) skip = Skipped.Of(i + 1, raw, started ? "event-prose" : "event-title");
            else if (bullet.Length == 0 && (EventWords.IsNotice(body) || (spans is [{ IsVague: true }, ..] && !isKnown))) skip = Skipped.Of(i + 1, raw, "event-prose");
            if (skip is not null)
            {
                skipped.Add(skip);
                heading = skip.Kind == "blank-line" || text.Length > 60 ? null : skip;
                continue;
            }
            started = true;
            var lines = Events(i + 1, raw, body, spans).ToList();
            if (lines[0].Title.Length > 0) heading = null;
            foreach (var line in lines) yield return line.Title.Length > 0 || heading is null ? line : Titled(line, Title(heading.Text));
        }
    }

    // "Early May Bank Holiday: 3 May": a month inside a name is no date of its own.
    private static List<FoundSpan> Spans(string body)
    {
        var spans = DaySpanText.Joined(body, new SpanFinder(body, false).Spans());
        bool IsName(FoundSpan span) => span.IsVague && body.Length > span.End + 1 && body[span.End] == ' ' && char.IsLetter(body[span.End + 1]);
        return spans.Exists(span => !IsName(span)) ? [.. spans.Where(span => !IsName(span))] : spans;
    }

    // "Whit Monday week: no lifting": something and what is with it, in few words.
    private static bool IsEntry(string text) => text.Length <= 80 && text.IndexOf(": ", StringComparison.Ordinal) > 0 && !EventWords.IsNotice(text);

    private static string WithoutSpans(string body, List<FoundSpan> spans) => string.Concat(spans.Select((span, i) => body[(i == 0 ? 0 : spans[i - 1].End)..span.At]).Append(body[(spans.Count == 0 ? 0 : spans[^1].End)..]));

    // The line's own event, and one more for each further span that has no name, or the name of a known kind; other spans stay remarks.
    private static IEnumerable<EventLine> Events(int line, string raw, string body, List<FoundSpan> spans)
    {
        var brackets = Brackets.Matches(body).ToList();
        var own = spans.Where((span, i) => i == 0 || !brackets.Exists(bracket => bracket.Index < span.At && span.End < bracket.Index + bracket.Length)).ToList();
        var remarks = brackets.Where(bracket => !own.Exists(span => bracket.Index <= span.At && span.End <= bracket.Index + bracket.Length)).Select(bracket => bracket.Groups["in"].Value.Trim()).Where(remark => remark.Any(char.IsLetterOrDigit)).ToList();
        var gaps = Enumerable.Range(0, own.Count + 1).Select(i => body[(i == 0 ? 0 : own[i - 1].End)..(i < own.Count ? own[i].At : body.Length)]).ToList();
        var isNameBehind = own.Count > 0 && Title(gaps[0]).Length == 0;
        var names = gaps.Select((gap, i) => Title(i == 0 ? Named(gap) : gap, isNameBehind && i > 0)).ToList();
        if (own.Count == 0) return [Made(line, raw, body, names[0], null, remarks)];
        // "26 Oct half-term, 5 Nov fireworks": the names stand behind their days.
        if (isNameBehind) return own.Select((span, i) => Made(line, raw, body, names.Skip(i + 1).FirstOrDefault(name => name.Length > 0) ?? "", span, i == 0 ? remarks : []));
        var made = new List<EventLine>();
        for (var i = 1; i < own.Count; i++)
        {
            if (names[i].Length == 0 || EventWords.Of(names[i]) is not (EventKind.Other, false)) made.Add(Made(line, raw, body, names[i].Length == 0 ? names[0] : names[i], own[i], []));
            else remarks.Add(Spelling.Tidy(gaps[i] + body[own[i].At..own[i].End]).Trim(' ', ',', ';', '.'));
        }
        // "Hall from 3 May closed" is told by both ends.
        if (names[^1].Length > 0 && own.Count == 1 && EventWords.Of(names[0]) is (EventKind.Other, false) && EventWords.Of(names[^1]) is (EventKind.Other, false) && EventWords.Of($"{names[0]} {names[^1]}") is not (EventKind.Other, false))
            names[0] = $"{names[0]} {names[^1]}";
        else if (names[^1].Length > 0) remarks.Add(names[^1]);
        return made.Prepend(Made(line, raw, body, names[0], own[0], remarks));
    }

    // "Rugby tour: coaches go on" is the tour; "School: autumn half-term" needs both.
    private static string Named(string before)
    {
        var colon = before.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0 || EventWords.Of(before[..colon]) is (EventKind.Other, false)) return before;
        return EventWords.Of(before[colon..]) is (EventKind.Other, false) ? before[..colon] : before;
    }

    private static EventLine Made(int line, string raw, string body, string title, FoundSpan? span, IReadOnlyList<string> remarks) =>
        Titled(new EventLine(line, raw, EventKind.Other, false, "", span, body, remarks), title);

    private static EventLine Titled(EventLine line, string title)
    {
        var (kind, isTest) = EventWords.Of(title);
        return line with { Title = title, Kind = kind, IsTest = isTest };
    }

    /// <summary>A name without brackets, signs and the words that lead to a date.</summary>
    /// <param name="isBehind">It stands behind its date: no word of it leads to one.</param>
    private static string Title(string text, bool isBehind = false)
    {
        var words = Spelling.Tidy(Brackets.Replace(text, " ")).Trim(' ', ',', ';', ':', '-', '–', '(', ')', '.').Split(' ').ToList();
        var named = words.FindLastIndex(word => !Links.Contains(word.TrimEnd(',', ':').ToLowerInvariant()));
        return named < 0 ? "" : string.Join(' ', isBehind ? words : words[..(named + 1)]).Trim(' ', ',', ';', ':', '-', '–');
    }
}
