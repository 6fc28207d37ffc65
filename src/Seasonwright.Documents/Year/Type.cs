using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Year;

/// <summary>The few sizes and weights of the year's drawing; nothing is smaller than 9 px.</summary>
internal static class Type
{
    public static TextStyle Name { get; } = new(11.5, FontWeight.SemiBold);
    public static TextStyle Row { get; } = new(10.5);
    public static TextStyle Heading { get; } = new(11.5, FontWeight.SemiBold);
    public static TextStyle Figure { get; } = new(10, FontWeight.SemiBold);
    public static TextStyle Body { get; } = new(10.5);
    public static TextStyle Mark { get; } = new(10, FontWeight.Medium);
    public static TextStyle Small { get; } = new(9);
    public static TextStyle SmallHeavy { get; } = new(9, FontWeight.SemiBold);
}
