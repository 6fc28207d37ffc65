using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;
using Seasonwright.Web.Lists;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A squad list as pasted or brought as a file, with what has been answered about it.</summary>
/// <param name="File">The file that is read; null while a pasted list is.</param>
/// <param name="Text">What stands in the box.</param>
internal sealed record SquadForm(BroughtFile? File, string Text, FormAnswers Said)
{
    public static SquadForm Empty { get; } = new(null, "", FormAnswers.Of(Answers.None));

    public bool IsEmpty => File is null && Text.Length == 0;

    public static async Task<SquadForm> ReadAsync(Posted posted)
    {
        var said = FormAnswers.Read(posted, Answers.None);
        // A file chosen now comes before what is typed, and what is typed before a file that was read earlier.
        if (await posted.FileAsync("file") is var (name, bytes)) return new(new(name, bytes), "", said);
        var text = posted.Raw("text");
        return text.Length > 0 ? new(null, text, said) : new(BroughtFile.Kept(posted["kept-name"], posted.Raw("kept")), "", said);
    }

    /// <summary>Reads the list with everything offered taken as answered.</summary>
    public SquadList? Read(DateOnly today) => IsEmpty ? null : Said.Settle(answers =>
    {
        var options = new SquadOptions(today, answers);
        var list = File is { } file ? SquadReader.Read(file.Name, file.Bytes, options) : SquadReader.Read(SourceText.OfText(Words.Say("list.pasted"), Text), options);
        return (list, list.Questions);
    }).Read;
}
