using System.Globalization;
using Seasonwright.Core;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>What words of load mean in per cent of the reference week, as the coach says it: "hard=90, medium=70, light=50".</summary>
internal static class LoadScale
{
    /// <summary>Null where the text is no such list or a share is not 0 to 200.</summary>
    public static Dictionary<string, int>? Read(string text)
    {
        var scale = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var part in text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (part.Split('=', StringSplitOptions.TrimEntries) is not [{ Length: > 0 } word, var share] || !int.TryParse(share.TrimEnd('%', ' '), NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number > 200) return null;
            scale[word] = number;
        }
        return scale.Count > 0 ? scale : null;
    }
}
