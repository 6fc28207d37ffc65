namespace Seasonwright.Documents.Draw;

/// <summary>How wide texts are, in px at 1x: what layout, page and paper agree on.</summary>
public static class TextWidths
{
    /// <summary>Width of one line, not rounded; 0 for the empty text. Scales exactly with the size.</summary>
    public static double Of(string text, TextStyle style)
    {
        var face = FontFace.Of(style.Weight);
        return face.Advance(text) * style.Size / face.UnitsPerEm;
    }
}
