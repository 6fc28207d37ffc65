namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>A column of a sheet.</summary>
/// <param name="Width">In widths of a digit.</param>
/// <param name="IsUpright">Its heading is written upwards, over a narrow column.</param>
internal sealed record SheetColumn(string Heading, double Width, bool IsUpright = false);
