using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Draw;

/// <summary>The looks as CSS, for the page (colours by custom property) and for a file (colours as they are).</summary>
public static class Stylesheet
{
    /// <summary>
    /// All the page needs for drawings: font faces, palette, looks. Served as one file of our own, so that the strict
    /// policy <c>style-src 'self'</c> holds.
    /// </summary>
    /// <param name="fontFolder">Where the font files are served, for instance <c>/fonts/</c>, ending in a slash.</param>
    public static string ForPage(string fontFolder)
    {
        var css = new StringBuilder();
        foreach (var file in FontFile.All)
            Face(css, file, $"url(\"{fontFolder}{file.FileName}\") format(\"truetype\")");
        css.Append(Palette.Css());
        Rules(css, tint => $"var(--{tint.Name})");
        return css.ToString();
    }

    /// <summary>
    /// The looks for a file on its own in one scheme, and the fonts themselves. Colours stand in the rules: many viewers
    /// of SVG know no custom properties.
    /// </summary>
    public static string ForFile(Scheme scheme)
    {
        var css = new StringBuilder(Fonts.Value);
        Rules(css, tint => tint.In(scheme).ToString());
        return css.ToString();
    }

    /// <summary>The font faces with the files inside, for a page that opens without any server.</summary>
    public static string FontsInside => Fonts.Value;

    private static readonly Lazy<string> Fonts = new(() =>
    {
        var css = new StringBuilder();
        foreach (var file in FontFile.All)
        {
            using var stream = file.Open();
            Face(css, file, $"url(data:font/woff;base64,{Convert.ToBase64String(Woff.Of(stream))}) format(\"woff\")");
        }
        return css.ToString();
    });

    private static void Face(StringBuilder css, FontFile file, string source) => css
        .Append(CultureInfo.InvariantCulture, $"@font-face{{font-family:\"{FontFile.Family}\";font-style:normal;")
        .Append(CultureInfo.InvariantCulture, $"font-weight:{(int)file.Weight};font-display:block;")
        .Append("src:").Append(source).Append("}\n");

    private static void Rules(StringBuilder css, Func<Tint, string> colour)
    {
        // Geometric precision keeps a browser from rounding widths to whole pixels; the widths are then ours.
        css.Append(CultureInfo.InvariantCulture, $".drawing text{{font-family:{FontFile.Family},sans-serif;")
            .Append("font-variant-numeric:tabular-nums;text-rendering:geometricPrecision}\n");
        foreach (var look in Looks.All)
        {
            css.Append(".drawing .").Append(look.Name).Append('{');
            switch (look)
            {
                case TextLook text:
                    css.Append("fill:").Append(colour(text.Fill));
                    break;
                case MarkLook mark:
                    css.Append("fill:").Append(mark.Fill is { } fill ? colour(fill) : "none");
                    if (mark.Stroke is { } stroke)
                    {
                        css.Append(";stroke:").Append(colour(stroke))
                            .Append(CultureInfo.InvariantCulture, $";stroke-width:{mark.StrokeWidth}");
                    }
                    if (mark.Dash is { } dash)
                        css.Append(CultureInfo.InvariantCulture, $";stroke-dasharray:{dash} {dash}");
                    break;
            }
            css.Append("}\n");
        }
    }
}
