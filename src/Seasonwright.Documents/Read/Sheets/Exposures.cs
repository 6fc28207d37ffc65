namespace Seasonwright.Documents.Read.Sheets;

/// <summary>Sessions of a quality, as marks or a figure: "x", "xx", "2".</summary>
internal static class Exposures
{
    /// <summary>1 to 3; null where a cell says something else.</summary>
    public static int? Of(string text) => text.Length is >= 1 and <= 3 && text.All(c => c is 'x' or 'X' or '•' or '●' or '✓' or '+') ? text.Length : null;
}
