namespace Seasonwright.Documents.Read;

/// <summary>Why a file cannot be taken in. A file with a problem gives no rows: it is taken in whole or not at all.</summary>
/// <param name="Id">The kind of problem, for instance <c>file-large</c>.</param>
/// <param name="File">The file's name without its folder.</param>
/// <param name="Line">Physical line, 1 is the first; null when the whole file is meant.</param>
/// <param name="Column">Character of the line, or cell of the row where <paramref name="What"/> speaks of cells; 1 is the first.</param>
/// <param name="What">What is wrong, as a sentence.</param>
/// <param name="Mend">How to mend it, as a sentence.</param>
public sealed record Problem(string Id, string File, int? Line, int? Column, string What, string Mend)
{
    /// <summary>A problem with the sentences <c>problem.ID.what</c> and <c>problem.ID.mend</c>; both may use the same values.</summary>
    public static Problem Of(string id, string file, int? line, int? column, params object?[] values) =>
        new(id, file, line, column, Sentences.Say($"problem.{id}.what", values), Sentences.Say($"problem.{id}.mend", values));

    /// <summary>One line: <c>file:line:column: what mend</c>, leaving out what is not known.</summary>
    public override string ToString() =>
        string.Join(':', new[] { File, Line?.ToString(System.Globalization.CultureInfo.InvariantCulture), Column?.ToString(System.Globalization.CultureInfo.InvariantCulture) }.OfType<string>())
        + $": {What} {Mend}";
}
