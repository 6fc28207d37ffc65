using System.Text.RegularExpressions;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>Events from lines of prose: a title with days beside it, remarks in brackets.</summary>
internal static class EventProse
{
    private static readonly Regex Bullet = new(@"^\s*(?:[*•·–+-]|\[ ?\]|\d{1,2}\))\s*", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);
    private static readonly Regex Brackets = new(@"\((?<in>[^()]*)\)", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);
    private static readonly string[] Links = ["leave", "leaves", "depart", "departs", "on", "is", "are", "will", "be", "am", "at", "the", "vom", "von", "from", "ab", "und", "and"];

    public static IEnumerable<EventLine> Lines(SourceText source, List<Skipped> skipped)
    {
        var started = false;
        for (var i = 0; i < source.Lines.Count; i++)
        {
            var raw = source.Lines[i];
            var text = Spelling.Tidy(raw);
            var bullet = Bullet.Match(text);
            var body = text[bullet.Length..];
            var spans = DaySpanText.Joined(body, new SpanFinder(body, false).Spans());
            var (kind, isTest) = EventWords.Of(spans.Count == 0 ? body : body[..spans[0].At] + body[spans[0].End..]);
            var known = isTest || kind != EventKind.Other;
            if (text.Length == 0) skipped.Add(Skipped.Of(i + 1, raw, "blank-line"));
            else if (spans.Count == 0 && (bullet.Length == 0 || !known)) skipped.Add(Skipped.Of(i + 1, raw, started ? "event-prose" : "event-title"));
            else if (bullet.Length == 0 && (EventWords.IsNotice(body) || (spans[0].IsVague && !known))) skipped.Add(Skipped.Of(i + 1, raw, "event-prose"));
            else
            {
                started = true;
                yield return Line(i + 1, raw, body, spans, kind, isTest);
            }
        }
    }

    private static EventLine Line(int line, string raw, string body, List<FoundSpan> spans, EventKind kind, bool isTest)
    {
        var (before, after) = spans.Count == 0 ? (body, "") : (body[..spans[0].At], body[spans[0].End..]);
        var remarks = Brackets.Matches(body).Select(match => match.Groups["in"].Value).Where(remark => new SpanFinder(remark, false).Spans().Count == 0).ToList();
        (before, after) = (Brackets.Replace(before, " "), Brackets.Replace(after, " "));
        var title = Title(before.Contains(':', StringComparison.Ordinal) ? before[..before.IndexOf(':', StringComparison.Ordinal)] : before);
        if (title.Length == 0) (title, after) = (Title(after), "");
        if (Title(after).Length > 0) remarks.Add(Title(after));
        return new EventLine(line, raw, kind, isTest, title, spans.FirstOrDefault(), body, remarks);
    }

    private static string Title(string text)
    {
        var words = Spelling.Tidy(text).Trim(' ', ',', ';', ':', '-', '–', '(', ')', '.').Split(' ').ToList();
        while (words.Count > 0 && Links.Contains(words[^1].TrimEnd(',', ':').ToLowerInvariant())) words.RemoveAt(words.Count - 1);
        return string.Join(' ', words).Trim(' ', ',', ';', ':', '-', '–');
    }
}
