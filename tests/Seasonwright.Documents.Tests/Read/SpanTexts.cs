using CsCheck;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Texts made of the pieces that spans are made of, in any order, and of anything else.</summary>
internal static class SpanTexts
{
    private static readonly string[] Pieces =
    [
        "1", "2", "12", "31", "29", "00", "99", "2026", "1999", "9999", "20261231", "123456789012", "Jan", "Feb", "March", "Mai", "dec.", "Mon", "Mi", "Wednesdays", "mittwochs", "every", "jeden", "other",
        "-", "–", "→", "..", "…", ".", "/", ",", "(", ")", "?", "'", ":", "&", "+", "to", "bis", "until", "from", "ab", "begins", "in", "of", "KW", "week", "w/c", "weekend", "KW42", "W60", "first", "last",
        "mid", "Ende", "between", "and", "und", "for", "two", "weeks", "days", "am", "p.m.", "a.", "noon", "half", "day", "14:00", "25:99", "18h30", "Uhr", "th", "inclusive", "tbc", "back", "t/m", "\t", "\u00A0", "\uD800", "e\u0301", "🏐", "١٢", "m",
    ];

    public static Gen<string> Any { get; } = Gen.OneOf(
        Gen.Select(Gen.OneOf(Pieces), Gen.OneOf("", " ", " ")).Select((piece, space) => piece + space).Array[0, 12].Select(string.Concat),
        Gen.String[0, 60]);
}
