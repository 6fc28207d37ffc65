using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Read.Spans;

internal enum SpanTokenKind
{
    Number,
    Word,
    Sign,
}

/// <summary>A piece of a text in which days are looked for.</summary>
/// <param name="Text">Digits; a word in lower case without accents; or a sign: every dash and arrow is "-", every run of dots "..".</param>
/// <param name="Raw">As written.</param>
/// <param name="At">Where it starts in the text as written.</param>
/// <param name="Spaced">White space stands before it.</param>
internal readonly record struct SpanToken(SpanTokenKind Kind, string Text, string Raw, int At, bool Spaced)
{
    private const string Dashes = "-\u2010\u2011\u2012\u2013\u2014\u2015\u2212~";
    private const string Arrows = "\u2192\u21D2\u27A1\u2794\u279C\u27F6\u2023\u00BB>";

    /// <summary>Characters.</summary>
    public int Length => Raw.Length;

    public int End => At + Length;

    public bool IsCapital => char.IsUpper(Raw[0]);

    /// <summary>A number of at most eight digits, otherwise -1.</summary>
    public int Value => Kind == SpanTokenKind.Number && Text.Length <= 8 ? int.Parse(Text, CultureInfo.InvariantCulture) : -1;

    public static List<SpanToken> Split(string text)
    {
        var tokens = new List<SpanToken>();
        for (var at = 0; at < text.Length;)
        {
            var spaced = at > 0 && char.IsWhiteSpace(text[at - 1]);
            if (char.IsWhiteSpace(text[at])) at++;
            else
            {
                var token = Next(text, at, spaced);
                tokens.Add(token);
                at = token.End;
            }
        }
        return tokens;
    }

    /// <summary>A word in lower case without accents, so that "März" and "MARZ" are one.</summary>
    public static string Fold(string word)
    {
        var folded = new StringBuilder(word.Length);
        foreach (var c in word)
        {
            // Letters beyond Latin and Greek have no accents to drop here, and half a surrogate pair has no normal form at all.
            foreach (var part in c is >= '\u00C0' and < '\u0250' ? c.ToString().Normalize(NormalizationForm.FormD) : c.ToString())
                if (char.GetUnicodeCategory(part) != UnicodeCategory.NonSpacingMark) folded.Append(Plain(char.ToLowerInvariant(part)));
        }
        return folded.ToString();
    }

    private static string Plain(char c) => c switch
    {
        'ß' => "ss",
        'ø' => "o",
        'æ' => "ae",
        'ł' => "l",
        _ => c.ToString(),
    };

    private static SpanToken Next(string text, int at, bool spaced)
    {
        var c = text[at];
        if (char.IsAsciiDigit(c)) return Run(SpanTokenKind.Number, char.IsAsciiDigit);
        if (char.IsLetter(c))
        {
            var (word, length) = (Run(SpanTokenKind.Word, IsWordPart), MeridiemLength(text, at));
            return length > 0 ? new(SpanTokenKind.Word, $"{char.ToLowerInvariant(c)}m", text.Substring(at, length), at, spaced) : word;
        }
        if (text.AsSpan(at) is ['-' or '=' or '\u2013', '>', ..]) return Sign("-", 2);
        if (text.AsSpan(at).StartsWith("-->", StringComparison.Ordinal)) return Sign("-", 3);
        if (Dashes.Contains(c, StringComparison.Ordinal) || Arrows.Contains(c, StringComparison.Ordinal)) return Sign("-", RunLength(at, d => Dashes.Contains(d, StringComparison.Ordinal)));
        if (c == '\u2026') return Sign("..", 1);
        if (c == '.' && RunLength(at, d => d == '.') is > 1 and var dots) return Sign("..", dots);
        return Sign(c is '\u2019' or '\u2018' or '\u00B4' or '`' ? "'" : c.ToString(), 1);

        SpanToken Sign(string sign, int length) => new(SpanTokenKind.Sign, sign, text.Substring(at, Math.Max(length, 1)), at, spaced);

        SpanToken Run(SpanTokenKind kind, Func<char, bool> isPart)
        {
            var length = RunLength(at, isPart);
            var run = text.Substring(at, length);
            return new(kind, kind == SpanTokenKind.Word ? Fold(run) : run, run, at, spaced);
        }

        int RunLength(int from, Func<char, bool> isPart)
        {
            var end = from;
            while (end < text.Length && isPart(text[end])) end++;
            return end - from;
        }
    }

    private static bool IsWordPart(char c) => char.IsLetterOrDigit(c) || char.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark;

    // "a.m.", "p. m." and "a.m": one word.
    private static int MeridiemLength(string text, int at)
    {
        if (text[at] is not ('a' or 'A' or 'p' or 'P') || (at > 0 && char.IsLetter(text[at - 1])) || at + 1 >= text.Length || text[at + 1] != '.') return 0;
        var m = at + 2;
        while (m < text.Length && text[m] == ' ') m++;
        if (m >= text.Length || text[m] is not ('m' or 'M')) return 0;
        if (m + 1 < text.Length && text[m + 1] == '.') return m + 2 - at;
        return m + 1 < text.Length && char.IsLetterOrDigit(text[m + 1]) ? 0 : m + 1 - at;
    }
}
