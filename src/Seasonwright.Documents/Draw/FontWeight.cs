namespace Seasonwright.Documents.Draw;

/// <summary>The weights the drawing uses; the number is the CSS and OpenType weight class.</summary>
public enum FontWeight
{
    Regular = 400,
    Medium = 500,
    SemiBold = 600,
}
