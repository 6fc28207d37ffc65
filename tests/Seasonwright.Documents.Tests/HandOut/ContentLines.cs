using System.Text;
using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Tests.HandOut;

/// <summary>A calendar's text taken apart by the letter of RFC 5545, 3.1, without any library.</summary>
internal static partial class ContentLines
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The unfolded lines. Fails on what the RFC forbids: long lines, letters cut in two, bare line breaks, control characters, lines without a name.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?<!\r)\n|\r(?!\n)", text);
        Assert.DoesNotMatch(@"[\x00-\x08\x0B\x0C\x0E-\x1F\x7F]", text);
        var unfolded = new List<string>();
        foreach (var line in text[..^2].Split("\r\n"))
        {
            // Throws on half of a surrogate pair: a letter cut in two.
            Assert.InRange(Strict.GetByteCount(line), 1, 75);
            if (line[0] is ' ' or '\t') unfolded[^1] += line[1..];
            else unfolded.Add(line);
        }
        Assert.All(unfolded, line => Assert.Matches(ContentLine(), line));
        return unfolded;
    }

    /// <summary>Each entry's lines, in order.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Entries(string text)
    {
        var entries = new List<IReadOnlyList<string>>();
        List<string>? open = null;
        foreach (var line in Of(text))
        {
            if (line == "BEGIN:VEVENT")
            {
                Assert.Null(open);
                open = [];
            }
            else if (line == "END:VEVENT")
            {
                entries.Add(open!);
                open = null;
            }
            else open?.Add(line);
        }
        Assert.Null(open);
        return entries;
    }

    /// <summary>The value of a property of an entry, as written; null where it has none. More than one is a failure.</summary>
    public static string? Value(this IReadOnlyList<string> entry, string name) =>
        entry.SingleOrDefault(line => line.StartsWith(name, StringComparison.Ordinal) && line[name.Length] is ':' or ';') is { } line ? line[(name.Length + (line[name.Length] == ':' ? 1 : 0))..] : null;

    [GeneratedRegex("""\A[A-Z0-9-]+(;[A-Z0-9-]+=("[^"]*"|[^";:,]*))*:.*\z""", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex ContentLine();
}
