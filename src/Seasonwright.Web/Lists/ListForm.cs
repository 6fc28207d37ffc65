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

    /// <summary>What stands in the box: of a file that could not be read, what stood there before.</summary>
    public string Text { get; private init; } = "";

    internal static async Task<ListForm> ReadAsync(Posted posted, Answers remembered)
    {
        var text = posted.Raw("text");
        var name = posted["name"] is { Length: > 0 } known ? known : Words.Say("list.pasted");
        var source = await posted.FileAsync("file") is var (file, bytes) ? SourceText.OfBytes(file, bytes) : SourceText.OfText(name, text);
        return new ListForm(source, FormAnswers.Read(posted, remembered))
        {
            IsEmpty = posted.File("file") is null && text.Length == 0,
            Text = source.Problems.Count == 0 ? source.Text : text,
        };
    }
}
