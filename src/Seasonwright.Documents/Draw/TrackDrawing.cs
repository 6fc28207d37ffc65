using Seasonwright.Core;

namespace Seasonwright.Documents.Draw;

/// <summary>One track of a drawing as a value: it is painted again only when it is no longer equal.</summary>
/// <param name="Id">Unique in the drawing; letters, digits and dashes, since it becomes part of element ids.</param>
/// <param name="Label">The track's name, cleaned on birth.</param>
/// <param name="Height">px at 1x; the shapes lie between 0 and this.</param>
/// <param name="Marks">What is seen, in painting order.</param>
/// <param name="Cells">
/// What is grasped and said, from left to right. Where there are cells they speak for the marks, which are then hidden
/// from screen readers.
/// </param>
public sealed record TrackDrawing(
    string Id, string Label, double Height, ValueList<Shape> Marks, ValueList<Cell> Cells)
{
    public string Id { get; } = IsId(Id) ? Id : throw new ArgumentException($"'{Id}' is no track id.", nameof(Id));

    public string Label { get; } = PlainText.Clean(Label);

    public double Height { get; } = Grid.SnapLength(Height);

    private static bool IsId(string id) =>
        !string.IsNullOrEmpty(id) && char.IsAsciiLetter(id[0]) && id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');
}
