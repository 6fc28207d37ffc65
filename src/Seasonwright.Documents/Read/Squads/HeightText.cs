using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>Tells heights as people write them; they are kept as written.</summary>
internal static partial class HeightText
{
    /// <summary>A height with its unit: "185 cm", "1,85 m", "5'9"".</summary>
    public static bool IsMarked(string text) => Marked().IsMatch(text);

    /// <summary>A height in a column of heights, where the unit may stand in the heading: "185", "1.85", "6-2".</summary>
    public static bool IsIn(string text) => IsMarked(text) || Bare().IsMatch(text);

    [GeneratedRegex(@"^(?:[12][0-9][0-9](?:[.,][0-9])? ?cm|[12][.,][0-9][0-9]? ?m|[12] ?m ?[0-9][0-9]|[4-7] ?(?:'|’|´|ft\.?|feet) ?(?:1[01]|[0-9])?(?:[.,]5|½)? ?(?:""|''|”|’’|in\.?|inches)?)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Marked();

    [GeneratedRegex(@"^(?:[12][0-9][0-9](?:[.,][0-9])?|[12][.,][0-9][0-9]|[4-7]-(?:1[01]|[0-9]))$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Bare();
}
