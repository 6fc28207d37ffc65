using System.Collections.Immutable;
using System.Globalization;

namespace Seasonwright.Documents.Draw;

/// <summary>Puts texts into the room there is; never wider than it.</summary>
public static class TextFit
{
    private const string Ellipsis = "…";

    /// <summary>
    /// The text whole, or shortened to its longest beginning that fits with an ellipsis, or nothing if not even
    /// one letter with its ellipsis fits. Letters with their accents and joined emoji are never cut apart.
    /// </summary>
    /// <param name="text">Cleaned first, see <see cref="PlainText.Clean"/>.</param>
    /// <param name="width">Room in px at 1x; zero or less holds nothing.</param>
    /// <param name="style">Size and weight it will stand in.</param>
    public static FittedText Fit(string text, double width, TextStyle style)
    {
        var whole = PlainText.Clean(text);
        return Whole(whole, width, style, FitKind.Whole) ?? Shortened(whole, width, style);
    }

    /// <summary>
    /// The first candidate that fits whole, else the first one shortened, else nothing. Give them from long to short,
    /// for instance <c>General preparation, General prep., Gen., G</c>.
    /// </summary>
    public static FittedText Fit(ImmutableArray<string> candidates, double width, TextStyle style)
    {
        for (var i = 0; i < candidates.Length; i++)
        {
            var kind = i == 0 ? FitKind.Whole : FitKind.Abbreviated;
            if (Whole(PlainText.Clean(candidates[i]), width, style, kind) is { } fitted)
                return fitted;
        }
        return candidates.IsDefaultOrEmpty ? FittedText.Nothing : Fit(candidates[0], width, style);
    }

    private static FittedText? Whole(string text, double width, TextStyle style, FitKind kind)
    {
        var needed = TextWidths.Of(text, style);
        return text.Length > 0 && needed <= width ? new(text, needed, kind) : null;
    }

    private static FittedText Shortened(string text, double width, TextStyle style)
    {
        if (!(width > 0))
            return FittedText.Nothing;
        var starts = StringInfo.ParseCombiningCharacters(text);
        // Widths grow with length but for kerning at the cut, so: halve to get near, then step down until it is true.
        var (low, high) = (0, starts.Length - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (TextWidths.Of(Cut(text, starts[middle]), style) <= width)
                low = middle;
            else
                high = middle - 1;
        }
        for (var letters = Math.Min(low + 1, starts.Length - 1); letters >= 1; letters--)
        {
            if (Whole(Cut(text, starts[letters]), width, style, FitKind.Shortened) is { } fitted)
                return fitted;
        }
        return FittedText.Nothing;
    }

    private static string Cut(string text, int length)
    {
        var beginning = text.AsSpan(0, length).TrimEnd(" .,;:-–·");
        return beginning.IsEmpty ? "" : string.Concat(beginning, Ellipsis);
    }
}
