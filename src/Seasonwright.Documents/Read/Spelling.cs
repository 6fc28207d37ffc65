using System.Text;

namespace Seasonwright.Documents.Read;

/// <summary>How names and cells are compared: equal in another Unicode form, with a no-break space or in other case is the same; anything else is not.</summary>
public static class Spelling
{
    /// <summary>Trimmed, every run of white space (no-break spaces and line breaks too) one space, invisible marks gone, Unicode form C.</summary>
    public static string Tidy(string text)
    {
        var tidy = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (IsInvisible(c)) continue;
            if (!char.IsWhiteSpace(c)) tidy.Append(c);
            else if (tidy.Length > 0 && tidy[^1] != ' ') tidy.Append(' ');
        }
        var made = tidy.ToString().TrimEnd(' ');
        try
        {
            return made.Normalize(NormalizationForm.FormC);
        }
        catch (ArgumentException)
        {
            // Half a surrogate pair has no normal form; it stays as written.
            return made;
        }
    }

    /// <summary>The tidy text without case, for comparing.</summary>
    public static string Fold(string text) => Tidy(text).ToLowerInvariant();

    /// <summary>The first characters of a text, as many as are allowed, never half of a pair.</summary>
    public static string Cut(string text, int longest) =>
        text.Length <= longest ? text : text[..(char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest)];

    public static bool Same(string one, string other) => Fold(one) == Fold(other);

    // Zero-width characters, the soft hyphen and a stray byte order mark, as pages leave them in pasted text.
    private static bool IsInvisible(char c) => c is '\u200B' or '\u200C' or '\u200D' or '\u2060' or '\uFEFF' or '\u00AD' or '\u200E' or '\u200F';
}
