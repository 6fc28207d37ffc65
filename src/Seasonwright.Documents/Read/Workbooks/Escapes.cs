using System.Globalization;
using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>Characters that XML cannot hold stand in workbooks as <c>_x000D_</c>.</summary>
internal static partial class Escapes
{
    public static string Undone(string text)
    {
        if (text.Contains("_x", StringComparison.Ordinal)) text = Escape().Replace(text, match => ((char)int.Parse(match.Groups["code"].Value, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)).ToString());
        return text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
    }

    [GeneratedRegex("_x(?<code>[0-9A-Fa-f]{4})_", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Escape();
}
