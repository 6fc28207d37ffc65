using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

internal enum CellSide
{
    ByKind,
    Left,
    Middle,
}

/// <summary>How a cell looks. Colours are the light palette's, so that a sheet looks like the page.</summary>
/// <param name="Format">A number format of the file, which each spreadsheet says in its own language; null for none.</param>
/// <param name="Edge">A line around it; null for a hairline below.</param>
/// <param name="Size">Points.</param>
internal sealed record CellLook(
    string? Format = null, Tint? Fill = null, Tint? Ink = null, bool IsBold = false, bool Wraps = false, bool IsUpright = false, CellSide Side = CellSide.ByKind, Tint? Edge = null, bool IsBare = false,
    double Size = 10);
