namespace Seasonwright.Documents.Draw;

/// <summary>An upright rectangle in the drawing, px at 1x, to 1/100 px; width and height are 0 or more.</summary>
public readonly record struct Area
{
    public Area(double x, double y, double width, double height)
    {
        (X, Y) = (Grid.Snap(x), Grid.Snap(y));
        (Width, Height) = (Grid.SnapLength(width), Grid.SnapLength(height));
    }

    public double X { get; }

    public double Y { get; }

    public double Width { get; }

    public double Height { get; }

    public double Right => Grid.Snap(X + Width);

    public double Bottom => Grid.Snap(Y + Height);

    public Point Centre => new(X + Width / 2, Y + Height / 2);

    /// <summary>The area less a margin on each side; a margin too wide leaves a zero width or height in the middle.</summary>
    public Area Inset(double sides, double topAndBottom)
    {
        var across = Math.Min(sides, Width / 2);
        var down = Math.Min(topAndBottom, Height / 2);
        return new(X + across, Y + down, Width - 2 * across, Height - 2 * down);
    }

    /// <summary>Whether the place lies inside; the edges count as inside.</summary>
    public bool Contains(Point place) =>
        place.X >= X && place.X <= Right && place.Y >= Y && place.Y <= Bottom;
}
