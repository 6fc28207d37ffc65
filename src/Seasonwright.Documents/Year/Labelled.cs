using System.Collections.Immutable;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>Where the name of a bar stands: inside it, else right of it, else left of it, whole if it can; else cut to fit inside.</summary>
/// <param name="Text">Nothing if there is no room at all.</param>
/// <param name="X">Where the text begins.</param>
/// <param name="From">Left end of bar and text together.</param>
/// <param name="To">Right end of bar and text together.</param>
internal readonly record struct Labelled(FittedText Text, double X, double From, double To)
{
    private const double Pad = 4;

    /// <param name="names">From long to short.</param>
    /// <param name="from">Left end of the bar.</param>
    /// <param name="to">Right end of the bar.</param>
    /// <param name="most">px that a text beside the bar may take.</param>
    public static Labelled Of(ImmutableArray<string> names, double from, double to, double most, TextStyle style, YearPlan plan)
    {
        var inside = to - from - 2 * Pad;
        var whole = TextFit.Fit(names[0], inside, style);
        if (whole.Kind == FitKind.Whole)
            return new(whole, from + Pad, from, to);
        var beside = TextFit.Fit(names[0], Math.Min(most, plan.Right - to - Pad), style);
        var before = TextFit.Fit(names[0], Math.Min(most, from - plan.Left - Pad), style);
        if (beside.Kind == FitKind.Whole || before.Kind != FitKind.Whole && IsTelling(beside))
            return new(beside, to + Pad - 1, from, to + Pad + beside.Width);
        if (IsTelling(before))
            return new(before, from - Pad + 1 - before.Width, from - Pad - before.Width, to);
        var cut = Ladder.Cut(names, inside, style);
        return new(cut, from + Pad, from, to);
    }

    private static bool IsTelling(FittedText text) => text.Kind == FitKind.Whole || text.Text.Length >= 6;
}
