using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// Makes any text safe to draw on one line: what people typed or pasted may hold characters that XML forbids or that
/// would reorder the line.
/// </summary>
public static class PlainText
{
    /// <summary>
    /// Runs of white space become one space and the ends are trimmed, as SVG would show them (a no-break space is
    /// kept); control characters, halves of surrogate pairs, non-characters and bidirectional controls are removed.
    /// Cleaning twice changes nothing more.
    /// </summary>
    public static string Clean(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (IsClean(text))
            return text;
        var clean = new StringBuilder(text.Length);
        var spaceDue = false;
        foreach (var rune in text.EnumerateRunes())
        {
            // EnumerateRunes stands U+FFFD for half a pair; one that was typed goes with them.
            if (rune.Value is ' ' or '\t' or '\n' or '\r')
            {
                spaceDue = clean.Length > 0;
                continue;
            }
            if (IsForbidden(rune))
                continue;
            if (spaceDue)
                clean.Append(' ');
            spaceDue = false;
            clean.Append(rune.ToString());
        }
        return clean.ToString();
    }

    private static bool IsClean(string text)
    {
        var before = ' ';
        foreach (var c in text)
        {
            if (c is < ' ' or (>= '\u007f' and < '\u00a0') or >= '\u200b' || c == ' ' && before == ' ')
                return false;
            before = c;
        }
        return text.Length == 0 || before != ' ';
    }

    private static bool IsForbidden(Rune rune) =>
        Rune.GetUnicodeCategory(rune) == UnicodeCategory.Control
        || rune.Value is 0xFFFD or (>= 0x200E and <= 0x200F) or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069)
            or 0x2028 or 0x2029 or (>= 0xFDD0 and <= 0xFDEF)
        || (rune.Value & 0xFFFE) == 0xFFFE;
}
