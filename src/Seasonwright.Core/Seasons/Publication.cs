using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Seasons;

/// <summary>A version that staff and athletes see. What it held is the season at its log entry.</summary>
/// <param name="Number">1, 2, 3 ... within the season.</param>
/// <param name="Name">What the coach called it, or null.</param>
public sealed record Publication(int Number, string? Name = null);

/// <summary>A version number as the subject of a key.</summary>
public readonly record struct VersionNumber(int Value) : ISubject<VersionNumber>
{
    public static VersionNumber Parse(string text) =>
        int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? new(number)
            : throw new FormatException($"'{text}' is no version number.");

    public override string ToString() => Value.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
