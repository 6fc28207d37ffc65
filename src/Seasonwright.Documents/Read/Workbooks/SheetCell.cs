using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>A cell that holds anything: a value, a formula, a fill or a comment.</summary>
/// <param name="Text">
/// In words: what is written, with line breaks; days as yyyy-MM-dd and times as HH:mm (with seconds where there are any), whatever their
/// format; numbers as their format shows them ("KW 34", "60 %"); TRUE and FALSE; errors by their code. Empty when there is no value.
/// </param>
/// <param name="Formula">As stored, without the equals sign; empty for a shared formula's followers; null where there is none. In old workbooks always empty.</param>
/// <param name="Fill">The colour behind it, theme and tint resolved; null without one. Colour by a condition is not told.</param>
/// <param name="Comment">What people wrote into notes or threads at the cell; empty without one.</param>
public sealed record SheetCell(CellAt At, CellValue Value, string Text, string? Formula, Rgb? Fill, string Comment)
{
    public int Row => At.Row;

    public int Column => At.Column;

    public bool IsFormula => Formula is not null;

    /// <summary>Whether there is no value; a fill or a comment may still be there.</summary>
    public bool IsEmpty => Value is CellValue.Empty || Text.Length == 0;
}
