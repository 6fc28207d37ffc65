using System.Text.RegularExpressions;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Texts as the file holds them.</summary>
internal static partial class SheetText
{
    // The most a cell holds in any spreadsheet is 32,767; what the file escapes takes more room.
    private const int Longest = 32_000;

    /// <summary>On one line, without what XML forbids, and <see cref="Escaped"/>.</summary>
    public static string Of(string text)
    {
        var clean = PlainText.Clean(text);
        if (clean.Length > Longest) clean = PlainText.Clean(clean[..Longest]);
        return Escaped(clean);
    }

    /// <summary>What would read as an escape of the file (ISO/IEC 29500-1, 22.9.2.19, from memory) is escaped itself.</summary>
    public static string Escaped(string text) => Escape().Replace(text, "_x005F$0");

    /// <summary>Whether a spreadsheet would take it for a formula when it is typed in again, as editing the cell does.</summary>
    public static bool IsLikeFormula(string text) => text is ['=' or '+' or '-' or '@' or '\t' or '\'', ..];

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Escape();
}
