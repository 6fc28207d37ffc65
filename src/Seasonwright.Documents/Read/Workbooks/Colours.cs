using System.Globalization;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>Colours as cells name them: written out, by number of the theme or of the palette, each perhaps made lighter or darker.</summary>
/// <param name="theme">Light 1, dark 1, light 2, dark 2, six accents, two for links; fewer when the workbook has no theme.</param>
/// <param name="own">The workbook's own palette, or empty for the usual one.</param>
internal sealed class Colours(List<Rgb> theme, List<Rgb> own)
{
    // Palette 8 to 63 of ISO/IEC 29500-1, 18.8.27; 0 to 7 repeat 8 to 15.
    private static readonly string[] Usual =
        ("000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff 800000 008000 000080 808000 800080 008080 c0c0c0 808080 "
        + "9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff "
        + "00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc 99cc00 ffcc00 ff9900 ff6600 666699 969696 "
        + "003366 339966 003300 333300 993300 993366 333399 333333").Split(' ');

    /// <summary>The colour the element stood on names; null for "automatic" and for what does not exist.</summary>
    public Rgb? Of(Part xml)
    {
        var plain = xml["rgb"] is { } rgb ? Written(rgb)
            : xml.Whole("theme") is { } number ? number >= 0 && number < theme.Count ? theme[number] : null
            : xml.Whole("indexed") is { } index ? Indexed(index) : null;
        return plain is { } colour && double.TryParse(xml["tint"], NumberStyles.Float, CultureInfo.InvariantCulture, out var tint) && tint is >= -1 and <= 1 ? Tinted(colour, tint) : plain;
    }

    /// <summary>"FF7FB3D5" (the first two digits are the opacity, which cells do not have) or "7FB3D5".</summary>
    public static Rgb? Written(string? hex) => hex is { Length: 6 or 8 } && hex.All(char.IsAsciiHexDigit) ? Rgb.Parse($"#{hex[^6..]}") : null;

    /// <summary>A colour of the palette; null for "automatic" and beyond it.</summary>
    public Rgb? Indexed(int index) => index switch
    {
        < 0 or > 63 => null,
        _ when index < own.Count => own[index],
        < 8 => Written(Usual[index]),
        _ => Written(Usual[index - 8]),
    };

    /// <summary>ISO/IEC 29500-1, 18.8.19: the lightness is scaled towards black (below 0) or white.</summary>
    private static Rgb Tinted(Rgb colour, double tint)
    {
        var (red, green, blue) = (colour.Red / 255.0, colour.Green / 255.0, colour.Blue / 255.0);
        var (most, least) = (Math.Max(red, Math.Max(green, blue)), Math.Min(red, Math.Min(green, blue)));
        var light = (most + least) / 2;
        var after = tint < 0 ? light * (1 + tint) : light * (1 - tint) + tint;
        // With hue and saturation kept, each channel's distance from the lightness scales with the room left around it.
        var room = 1 - Math.Abs(2 * light - 1);
        var scale = room == 0 ? 0 : (1 - Math.Abs(2 * after - 1)) / room;
        return new(Channel(red), Channel(green), Channel(blue));

        byte Channel(double value) => (byte)Math.Round(Math.Clamp(after + (value - light) * scale, 0, 1) * 255);
    }
}
