namespace Seasonwright.Documents.Draw;

/// <summary>How large and how heavy a text stands.</summary>
public readonly record struct TextStyle
{
    /// <param name="size">Font size in px at 1x, above 0.</param>
    /// <param name="weight">One of the committed weights.</param>
    public TextStyle(double size, FontWeight weight = FontWeight.Regular)
    {
        if (!double.IsFinite(size) || size <= 0)
            throw new ArgumentOutOfRangeException(nameof(size), size, "A font size is a finite number above 0.");
        (Size, Weight) = (Grid.Snap(size), weight);
    }

    /// <summary>Font size in px at 1x, to 1/100.</summary>
    public double Size { get; }

    public FontWeight Weight { get; }
}
