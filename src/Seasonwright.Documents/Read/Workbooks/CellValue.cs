namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>What a cell holds. Of a formula it is the value stored with it; nothing is ever computed.</summary>
public abstract record CellValue
{
    private CellValue()
    {
    }

    /// <summary>No value and no words.</summary>
    internal static (CellValue Value, string Text) Nothing { get; } = (new Empty(), "");

    /// <summary>Characters, shown as they are; none are no value.</summary>
    internal static (CellValue Value, string Text) Said(string text) => text.Length == 0 ? Nothing : (new Words(text), text);

    /// <summary>A truth, shown as every spreadsheet shows it.</summary>
    internal static (CellValue Value, string Text) Said(bool truth) => (new Truth(truth), truth ? "TRUE" : "FALSE");

    /// <summary>An error, shown by its code.</summary>
    internal static (CellValue Value, string Text) Failed(string code) => (new Error(code), code);

    /// <summary>No value: a cell that has only a fill, a comment, or a formula without a stored value.</summary>
    public sealed record Empty : CellValue;

    /// <summary>Characters as written, rich text without its looks.</summary>
    public sealed record Words(string Text) : CellValue;

    public sealed record Number(double Amount) : CellValue;

    /// <summary>A day, with the time where the number has one or the format shows one.</summary>
    public sealed record Day(DateOnly Date, TimeOnly? At) : CellValue;

    /// <summary>A time of no day, rounded to the second.</summary>
    public sealed record Time(TimeOnly OfDay) : CellValue;

    /// <summary>Hours and minutes that may pass 24, as in <c>[h]:mm</c>; rounded to the second, negative where the cell is.</summary>
    public sealed record Span(TimeSpan Length) : CellValue;

    public sealed record Truth(bool Is) : CellValue;

    /// <summary>An error of the spreadsheet, for instance "#DIV/0!". It is never 0 and never empty.</summary>
    public sealed record Error(string Code) : CellValue;
}
