using Seasonwright.Core;

namespace Seasonwright.Documents.Draw;

/// <summary>One side of paper as a value: tracks one below the other within a margin.</summary>
/// <param name="Title">What the side shows, cleaned on birth.</param>
/// <param name="Width">Of the paper, points.</param>
/// <param name="Height">Of the paper, points.</param>
/// <param name="Margin">At the left and at the top, points.</param>
/// <param name="PointsPerPx">How large a px of the tracks is printed, above 0.</param>
/// <param name="Tracks">From top to bottom.</param>
public sealed record SheetDrawing(
    string Title, double Width, double Height, double Margin, double PointsPerPx, ValueList<TrackDrawing> Tracks)
{
    public string Title { get; } = PlainText.Clean(Title);

    /// <summary>px of the tracks that the paper is wide.</summary>
    public double WidthInPx => Width / PointsPerPx;

    /// <summary>px of the tracks that the paper is high.</summary>
    public double HeightInPx => Height / PointsPerPx;

    /// <summary>px of the tracks that the margin is wide.</summary>
    public double MarginInPx => Margin / PointsPerPx;
}
