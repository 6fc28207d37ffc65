using CsCheck;

namespace Seasonwright.Documents.Tests.Draw;

/// <summary>Texts as people and machines may hand them over, fair and foul.</summary>
internal static class Texts
{
    private static readonly string[] Pieces =
    [
        "Harbour Vale", " ", "  ", "&", "<", ">", "\"", "'", "</text>", "<!--", "]]>", "&amp;", "\t", "\r\n", "\0", "\u0007",
        "\u007f", "\u0085", "\u2028", "\ufffe", "\uffff", "\ud800", "\udc00", "\u202e", "ä", "a\u0308", "ß", "Łódź",
        "👩‍👩‍👧", "🤾🏽‍♀️", "港", "…", "–", "1", "27", "3:1", "General preparation", ".", "\u00a0", "\u200d",
    ];

    public static Gen<string> Any { get; } = Gen.OneOf(
        Gen.OneOf(Pieces).Array[0, 8].Select(string.Concat),
        Gen.String);
}
