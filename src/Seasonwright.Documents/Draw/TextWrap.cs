namespace Seasonwright.Documents.Draw;

/// <summary>Breaks texts into lines that fit.</summary>
public static class TextWrap
{
    /// <summary>
    /// The text in lines of whole words, each as full as the width lets it. A word wider than a line is cut with an ellipsis,
    /// as <see cref="TextFit"/> does; line breaks in the text are kept. No text is no line.
    /// </summary>
    /// <param name="width">px at 1x, above 0.</param>
    public static IReadOnlyList<string> Lines(string text, double width, TextStyle style)
    {
        ArgumentNullException.ThrowIfNull(text);
        return [.. text.Split('\n').SelectMany(paragraph => Wrapped(PlainText.Clean(paragraph), width, style))];
    }

    private static IEnumerable<string> Wrapped(string text, double width, TextStyle style)
    {
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && TextWidths.Of(longer, style) > width)
            {
                yield return line;
                longer = word;
            }
            line = TextFit.Fit(longer, width, style).Text;
        }
        if (line.Length > 0)
            yield return line;
    }
}
