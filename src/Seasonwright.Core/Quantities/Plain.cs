namespace Seasonwright.Core.Quantities;

/// <summary>Decimals that are equal are written alike: 2.50 and 2.5 are one value and must have one form in files.</summary>
internal static class Plain
{
    public static decimal Of(decimal value) => value / 1.000000000000000000m;
}
