namespace Seasonwright.Documents.Draw;

/// <summary>Which values of the palette are shown.</summary>
public enum Scheme
{
    /// <summary>Ink on warm paper.</summary>
    Light,
    /// <summary>Light ink on a dark ground.</summary>
    Dark,
    /// <summary>Black and greys on white, for a printer without colour.</summary>
    Grey,
}
