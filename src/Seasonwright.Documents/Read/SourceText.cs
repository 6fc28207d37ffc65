using Seasonwright.Core;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read;

/// <summary>
/// A file or pasted text as characters, before anything is understood. Line ends are made one (LF), the byte order mark is gone.
/// If <see cref="Problems"/> is not empty the text is empty: nothing of it can be read.
/// </summary>
public sealed class SourceText
{
    /// <summary>5 MB; a fixture list of a whole league has about 0.1.</summary>
    public const int LargestFile = 5_000_000;

    /// <summary>Characters.</summary>
    public const int LongestLine = 10_000;

    public const int MostLines = 20_000;

    private SourceText(string name, string text, string encoding, ValueList<Problem> problems)
    {
        Name = name;
        Text = problems.Count > 0 ? "" : text;
        Encoding = encoding;
        Problems = problems;
        Lines = Text.Length == 0 ? ValueList<string>.Empty : Text.Split('\n').ToValueList();
    }

    /// <summary>The file's name without its folder, or how a pasted text is called.</summary>
    public string Name { get; }

    public string Text { get; }

    /// <summary>In words, for instance "UTF-8 with byte order mark".</summary>
    public string Encoding { get; }

    public ValueList<Problem> Problems { get; }

    /// <summary>Physical lines; line n is at n - 1. A line end at the very end gives one empty line more.</summary>
    public ValueList<string> Lines { get; }

    /// <summary>
    /// The encoding is told by the byte order mark; without one, valid UTF-8 is UTF-8, text with every second byte zero is UTF-16,
    /// and the rest is Windows-1252 unless another code page is clearly told by its letters. Of a workbook it is the text of the sheet
    /// that holds the list, of a web page that of its list (<see cref="WebTable"/>), a line a row.
    /// </summary>
    public static SourceText OfBytes(string name, ReadOnlySpan<byte> bytes)
    {
        if (Workbook.Is(bytes)) return OfWorkbook(Workbook.Read(name, bytes.ToArray()));
        if (bytes.Length > LargestFile) return Refused(name, Problem.Of("file-large", name, null, null, bytes.Length, LargestFile));
        var decoded = TextDecoding.Of(bytes);
        return decoded.Trouble is { } trouble ? Refused(name, Problem.Of(trouble, name, decoded.Line, null, decoded.Encoding)) : Checked(name, decoded.Text, decoded.Encoding);
    }

    /// <summary>Text from a paste box.</summary>
    public static SourceText OfText(string name, string text) => text.Length > LargestFile
        ? Refused(name, Problem.Of("file-large", name, null, null, text.Length, LargestFile))
        : Checked(name, text, Sentences.Say("encoding.pasted"));

    /// <summary>One sheet of a workbook, a line a row.</summary>
    internal static SourceText OfSheet(Workbook workbook, Sheet sheet) => OfList(workbook, SheetText.Of(workbook, sheet));

    /// <summary>The sheet of a workbook that reads most like a list, a line a row.</summary>
    internal static SourceText OfWorkbook(Workbook workbook)
    {
        if (workbook.Problems.Count > 0) return Refused(workbook.Name, workbook.Problems[0]);
        return SheetText.Of(workbook) is { } list ? OfList(workbook, list) : Refused(workbook.Name, Problem.Of("empty", workbook.Name, null, null));
    }

    private static SourceText OfList(Workbook workbook, SheetText list)
    {
        var words = Sentences.Say("encoding.sheet", workbook.Format, list.Sheet);
        return Checked(workbook.Name, list.Text, list.Others.Count == 0 ? words : Sentences.Say("encoding.other-sheets", words, string.Join(", ", list.Others)));
    }

    private static SourceText Checked(string name, string text, string encoding)
    {
        if (WebTable.Is(text) && text.Length <= LargestFile && WebTable.Of(text) is { } table) (text, encoding) = (table, Sentences.Say("encoding.web-table", encoding));
        text = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        var problems = new List<Problem>();
        var (line, start) = (1, 0);
        for (var i = 0; i <= text.Length && problems.Count == 0; i++)
        {
            if (i < text.Length && text[i] != '\n')
            {
                if (char.IsControl(text[i]) && text[i] is not ('\t' or '\f' or '\v' or '\u0085') || IsHalf(text, i)) problems.Add(Problem.Of("binary", name, line, i - start + 1));
                continue;
            }
            if (i - start > LongestLine) problems.Add(Problem.Of("line-long", name, line, null, i - start, LongestLine));
            if (line > MostLines) problems.Add(Problem.Of("lines-many", name, null, null, MostLines));
            (line, start) = (line + 1, i + 1);
        }
        if (string.IsNullOrWhiteSpace(text)) problems.Add(Problem.Of("empty", name, null, null));
        return new SourceText(name, text, encoding, problems.ToValueList());
    }

    // Half of a surrogate pair, which no file could keep.
    private static bool IsHalf(string text, int i) => char.IsHighSurrogate(text[i]) ? i + 1 == text.Length || !char.IsLowSurrogate(text[i + 1]) : char.IsLowSurrogate(text[i]) && (i == 0 || !char.IsHighSurrogate(text[i - 1]));

    private static SourceText Refused(string name, Problem problem) => new(name, "", "", new([problem]));
}
