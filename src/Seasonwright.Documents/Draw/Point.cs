namespace Seasonwright.Documents.Draw;

/// <summary>A place in the drawing, px at 1x, x to the right and y downwards, to 1/100 px.</summary>
public readonly record struct Point
{
    public Point(double x, double y) => (X, Y) = (Grid.Snap(x), Grid.Snap(y));

    public double X { get; }

    public double Y { get; }
}
