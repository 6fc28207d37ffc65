using System.Globalization;

namespace Seasonwright.Documents.Draw;

/// <summary>An opaque sRGB colour. The palette has no half-transparent ones, so every contrast can be computed.</summary>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <param name="hex">Six hexadecimal digits after a number sign, as in style sheets.</param>
    /// <exception cref="FormatException">Anything else.</exception>
    public static Rgb Parse(string hex)
    {
        ArgumentNullException.ThrowIfNull(hex);
        if (hex.Length != 7 || hex[0] != '#')
            throw new FormatException($"'{hex}' is not a colour such as #1d2a33.");
        return new(Channel(1), Channel(3), Channel(5));

        byte Channel(int at) =>
            byte.Parse(hex.AsSpan(at, 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
    }

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"#{Red:x2}{Green:x2}{Blue:x2}");
}
