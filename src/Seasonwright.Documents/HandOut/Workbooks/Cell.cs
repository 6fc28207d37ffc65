namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>A cell of a sheet.</summary>
/// <param name="Value">A text, a number (<see cref="decimal"/>), a <see cref="DateOnly"/>, a <see cref="TimeOnly"/>, or null; of a formula what it gives.</param>
/// <param name="Formula">In the words of every spreadsheet, without the sign before it; null for a value.</param>
internal sealed record Cell(object? Value, CellLook Look, string? Formula = null);
