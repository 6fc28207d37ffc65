using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Draw;

/// <summary>Writes well-formed SVG: every text escaped, every number invariant with at most two decimals.</summary>
internal sealed class SvgMarkup
{
    private readonly StringBuilder text = new();

    public SvgMarkup Open(string element)
    {
        text.Append('<').Append(element);
        return this;
    }

    public SvgMarkup With(string attribute, string value)
    {
        text.Append(' ').Append(attribute).Append("=\"");
        Escape(value);
        text.Append('"');
        return this;
    }

    public SvgMarkup With(string attribute, double value)
    {
        text.Append(' ').Append(attribute).Append("=\"");
        Number(value);
        text.Append('"');
        return this;
    }

    public SvgMarkup With(string attribute, IEnumerable<Point> points)
    {
        text.Append(' ').Append(attribute).Append("=\"");
        var separator = "";
        foreach (var point in points)
        {
            text.Append(separator);
            Number(point.X);
            text.Append(',');
            Number(point.Y);
            separator = " ";
        }
        text.Append('"');
        return this;
    }

    /// <summary>Ends an opening tag whose content follows.</summary>
    public void Begin() => text.Append('>');

    /// <summary>Ends an element without content.</summary>
    public void Close() => text.Append("/>");

    /// <summary>Ends an opening tag with text as its only content, and the element.</summary>
    public void CloseWith(string content, string element)
    {
        text.Append('>');
        Escape(content);
        End(element);
    }

    public void End(string element) => text.Append("</").Append(element).Append('>');

    public override string ToString() => text.ToString();

    /// <summary>Whole hundredths written as integers: a page has thousands of numbers, and a format string doubles the time of painting.</summary>
    private void Number(double value)
    {
        var hundredths = checked((long)Math.Round(Grid.Snap(value) * 100));
        if (hundredths < 0)
            text.Append('-');
        var (whole, rest) = Math.DivRem(Math.Abs(hundredths), 100);
        text.Append(CultureInfo.InvariantCulture, $"{whole}");
        if (rest == 0)
            return;
        text.Append('.').Append((char)('0' + rest / 10));
        if (rest % 10 != 0)
            text.Append((char)('0' + rest % 10));
    }

    private void Escape(string value)
    {
        foreach (var c in value)
        {
            _ = c switch
            {
                '&' => text.Append("&amp;"),
                '<' => text.Append("&lt;"),
                '>' => text.Append("&gt;"),
                '"' => text.Append("&quot;"),
                '\'' => text.Append("&#39;"),
                _ => text.Append(c),
            };
        }
    }
}
