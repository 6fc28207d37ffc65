using System.Collections.Immutable;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>Texts from long to short, of which the first that fits is drawn.</summary>
internal static class Ladder
{
    /// <summary>The first that fits whole, or nothing: for figures and codes, which a cut would falsify.</summary>
    public static FittedText Whole(ImmutableArray<string> candidates, double width, TextStyle style)
    {
        foreach (var candidate in candidates)
        {
            var fitted = TextFit.Fit(candidate, width, style);
            if (fitted.Kind == FitKind.Whole)
                return fitted;
        }
        return FittedText.Nothing;
    }

    /// <summary>As above, and failing that the longest one shortened, if at least three letters of it remain.</summary>
    public static FittedText Cut(ImmutableArray<string> candidates, double width, TextStyle style)
    {
        var whole = Whole(candidates, width, style);
        if (whole.Kind != FitKind.Nothing || candidates.IsDefaultOrEmpty)
            return whole;
        var cut = TextFit.Fit(candidates[0], width, style);
        return cut.Text.Length >= 4 ? cut : FittedText.Nothing;
    }
}
