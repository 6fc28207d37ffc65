using Seasonwright.Documents.Read;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Lists;

/// <summary>A list as pasted or brought as a file, with what has been answered about it: all that the page knows stands in the form.</summary>
/// <param name="Source">The list.</param>
public sealed record ListForm(SourceText Source, FormAnswers Said)
{
    /// <summary>Before anything is pasted.</summary>
    public static ListForm Empty { get; } = new(SourceText.OfText("", ""), FormAnswers.Of(Answers.None));

    /// <summary>Whether there is anything to read.</summary>
    public bool IsEmpty { get; private init; } = true;

    /// <summary>What stands in the box.</summary>
    public string Text { get; private init; } = "";

    /// <summary>The file that is read; null while a pasted list is.</summary>
    internal BroughtFile? File { get; private init; }

    internal static async Task<ListForm> ReadAsync(Posted posted, Answers remembered)
    {
        var (text, pasted, said) = (posted.Raw("text"), Words.Say("list.pasted"), FormAnswers.Read(posted, remembered));
        var chosen = await posted.FileAsync("file") is var (name, bytes) ? new BroughtFile(name, bytes) : null;
        // A table copied with its joined cells comes as a file, and stands in the box as what was pasted.
        if (chosen?.Name == pasted)
        {
            var copied = SourceText.OfBytes(pasted, chosen.Bytes);
            return new(copied, said) { IsEmpty = false, Text = copied.Problems.Count == 0 ? copied.Text : text };
        }
        // A file chosen now comes before what is typed, and what is typed before a file that was read earlier.
        var file = chosen ?? (text.Length > 0 ? null : BroughtFile.Kept(posted["kept-name"], posted.Raw("kept")));
        return file is null ? new(SourceText.OfText(pasted, text), said) { IsEmpty = text.Length == 0, Text = text }
            : new(SourceText.OfBytes(file.Name, file.Bytes), said) { IsEmpty = false, File = file, Text = "" };
    }
}
