namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// Stops reading deep inside a workbook; <see cref="Workbook.Read"/> turns it into the problem it carries. It never leaves this room:
/// the parts of a file are read one inside the other, and a result handed up through all of them would say the same with more words.
/// </summary>
#pragma warning disable CA1032, CA1064, RCS1194 // It is internal on purpose and has only the one form.
internal sealed class WorkbookTrouble(string id, string? sheet, CellAt? at, params object?[] values) : Exception
#pragma warning restore CA1032, CA1064, RCS1194
{
    public string Id => id;

    public Problem ToProblem(string file) => Problem.Of(id, file, at?.Row, at?.Column, [Place, .. values]);

    /// <summary>"Sheet "Plan", cell C20: ", as far as known.</summary>
    private string Place => (sheet, at) switch
    {
        (null, _) => "",
        (_, null) => Sentences.Say("workbook.sheet", sheet),
        _ => Sentences.Say("workbook.cell", sheet, at),
    };
}
