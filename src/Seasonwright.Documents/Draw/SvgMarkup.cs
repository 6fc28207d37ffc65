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

    private void Number(double value) =>
        text.Append(Grid.Snap(value).ToString("0.##", CultureInfo.InvariantCulture));

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
