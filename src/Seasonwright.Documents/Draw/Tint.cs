namespace Seasonwright.Documents.Draw;

/// <summary>A colour by what it means, with its value in each scheme. The name is the CSS custom property without its dashes.</summary>
public sealed record Tint(string Name, Rgb Light, Rgb Dark, Rgb Grey)
{
    public Rgb In(Scheme scheme) => scheme switch
    {
        Scheme.Light => Light,
        Scheme.Dark => Dark,
        Scheme.Grey => Grey,
        _ => throw new ArgumentOutOfRangeException(nameof(scheme), scheme, "Not a scheme."),
    };
}
