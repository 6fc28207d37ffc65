using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>How cells look, by the number of their style: the format of their numbers and the colour behind them.</summary>
internal sealed class CellLooks
{
    private readonly List<(NumberFormat Format, Rgb? Fill)> looks = [];

    private CellLooks()
    {
    }

    /// <summary>A style that the workbook does not have is the plain one.</summary>
    public (NumberFormat Format, Rgb? Fill) this[int style] => style >= 0 && style < looks.Count ? looks[style] : (NumberFormat.General, null);

    public static CellLooks Read(Parts parts, string? styles, string? theme)
    {
        var read = new CellLooks();
        if (styles is null || parts.Find(styles) is not { } bytes) return read;
        // Colours of its own stand behind the fills that use them.
        var colours = new Colours(ThemeColours(parts, theme), OwnColours(styles, bytes));
        var (formats, fills) = (new Dictionary<int, NumberFormat>(), new List<Rgb?>());
        using var xml = new Part(styles, bytes);
        while (xml.Read())
        {
            if (!xml.IsStart) continue;
            if (xml.Element == "numFmt" && xml.Whole("numFmtId") is { } id && xml["formatCode"] is { } code) formats.TryAdd(id, NumberFormat.Of(code));
            else if (xml.Element == "fills") Fills(xml, colours, fills);
            else if (xml.Element == "dxfs") foreach (var _ in xml.Inside()) { }
            else if (xml.Element == "cellXfs") Looks(xml, formats, fills, read.looks);
        }
        return read;
    }

    private static void Looks(Part xml, Dictionary<int, NumberFormat> formats, List<Rgb?> fills, List<(NumberFormat, Rgb?)> looks)
    {
        foreach (var element in xml.Inside())
        {
            if (element != "xf") continue;
            var (format, fill) = (xml.Whole("numFmtId") ?? 0, xml.Whole("fillId") ?? 0);
            looks.Add((formats.GetValueOrDefault(format) ?? NumberFormat.BuiltIn(format), fill >= 0 && fill < fills.Count ? fills[fill] : null));
        }
    }

    private static void Fills(Part xml, Colours colours, List<Rgb?> fills)
    {
        var pattern = "none";
        foreach (var element in xml.Inside())
        {
            if (element == "fill") fills.Add(null);
            if (fills.Count == 0) continue;
            if (element == "patternFill") pattern = xml["patternType"] ?? "none";
            // The two patterns every workbook begins with are no colours of anybody's choice.
            else if (element == "fgColor" && pattern is not ("none" or "gray125")) fills[^1] = colours.Of(xml);
            else if (element == "bgColor" && pattern is not ("none" or "gray125" or "solid")) fills[^1] ??= colours.Of(xml);
            else if (element == "color") fills[^1] ??= colours.Of(xml);
        }
    }

    private static List<Rgb> OwnColours(string styles, byte[] bytes)
    {
        var own = new List<Rgb>();
        using var xml = new Part(styles, bytes);
        while (xml.Read())
        {
            if (xml.IsStart && xml.Element == "rgbColor" && own.Count < 64 && Colours.Written(xml["rgb"]) is { } rgb) own.Add(rgb);
        }
        return own;
    }

    private static List<Rgb> ThemeColours(Parts parts, string? theme)
    {
        var colours = new List<Rgb>();
        if (theme is null || parts.Find(theme) is not { } bytes) return colours;
        using var xml = new Part(theme, bytes);
        while (xml.Read())
        {
            if (!xml.IsStart || xml.Element != "clrScheme") continue;
            foreach (var element in xml.Inside())
            {
                if (element is "srgbClr" or "sysClr" && colours.Count < 12 && Colours.Written(xml["lastClr"] ?? xml["val"]) is { } rgb) colours.Add(rgb);
            }
        }
        // A theme lists dark 1, light 1, dark 2, light 2; cells count light 1, dark 1, light 2, dark 2.
        if (colours.Count >= 4) (colours[0], colours[1], colours[2], colours[3]) = (colours[1], colours[0], colours[3], colours[2]);
        return colours;
    }
}
