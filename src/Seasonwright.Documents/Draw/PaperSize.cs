using System.Collections.Immutable;

namespace Seasonwright.Documents.Draw;

/// <summary>A size of paper, upright, in points (1/72 inch) to the nearest whole point.</summary>
/// <param name="Id">As commands and forms say it, lower case.</param>
/// <param name="Name">As people say it.</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Height">The longer side.</param>
/// <param name="LeastText">The smallest text that may stand on it, points: a wall is read from further away than a hand.</param>
public sealed record PaperSize(string Id, string Name, double Width, double Height, double LeastText)
{
    /// <summary>297 mm by 420 mm (ISO 216).</summary>
    public static PaperSize A3 { get; } = new("a3", "A3", 842, 1191, 7);

    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("a4", "A4", 595, 842, 6);

    /// <summary>11 in by 17 in (ASME Y14.1, size B).</summary>
    public static PaperSize Tabloid { get; } = new("tabloid", "Tabloid", 792, 1224, 7);

    /// <summary>8.5 in by 11 in (ASME Y14.1, size A).</summary>
    public static PaperSize Letter { get; } = new("letter", "Letter", 612, 792, 6);

    public static ImmutableArray<PaperSize> All { get; } = [A3, A4, Tabloid, Letter];

    /// <summary>The size of an id, whatever its case; null if there is none.</summary>
    public static PaperSize? Find(string? id) => All.FirstOrDefault(size => string.Equals(size.Id, id, StringComparison.OrdinalIgnoreCase));
}
