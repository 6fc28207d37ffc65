using System.Collections.Immutable;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;
using Seasonwright.Web.Lists;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Bring;

/// <summary>A coach's own year workbook with what has been said about it: all that the page knows stands in the form.</summary>
/// <param name="File">Null before one is chosen.</param>
/// <param name="Roles">By the row's key; rows not named keep the role found.</param>
/// <param name="Team">An existing team's id; "" for a new one.</param>
/// <param name="TeamName">Of a new team, as typed; "" for the one that the workbook names.</param>
internal sealed record BringForm(BroughtFile? File, ImmutableSortedDictionary<string, RowRole> Roles, FormAnswers Said, string Team, string TeamName)
{
    private const string Role = "role:";

    public static BringForm Empty(string team) => new(null, SheetMap.Empty.Roles, FormAnswers.Of(Answers.None), team, "");

    public static string RoleField(string row) => Role + row;

    public static async Task<BringForm> ReadAsync(Posted posted)
    {
        var roles = SheetMap.Empty.Roles;
        foreach (var (row, word) in posted.Starting(Role))
            if (Enum.TryParse<RowRole>(word, out var role) && Enum.IsDefined(role)) roles = roles.SetItem(row, role);
        var chosen = await posted.FileAsync("file") is var (name, bytes) ? new BroughtFile(name, bytes) : BroughtFile.Kept(posted["kept-name"], posted.Raw("kept"));
        // What was said of another file says nothing of this one.
        var isAnother = posted.File("file") is not null && posted["kept-name"].Length > 0;
        return new(chosen, isAnother ? SheetMap.Empty.Roles : roles, isAnother ? FormAnswers.Of(Answers.None) : FormAnswers.Read(posted, Answers.None), posted["team"], isAnother ? "" : posted["team-name"]);
    }

    /// <summary>Reads the workbook with everything offered taken as answered.</summary>
    public SheetReading? Read()
    {
        if (File is null) return null;
        var book = Workbook.Read(File.Name, File.Bytes);
        return Said.Settle(answers =>
        {
            var read = SheetReader.Read(book, new SheetMap(Roles, answers));
            return (read, read.Questions);
        }).Read;
    }
}

/// <summary>A file that the form keeps while it is asked about.</summary>
internal sealed record BroughtFile(string Name, byte[] Bytes)
{
    /// <summary>As the form keeps it.</summary>
    public string Text => Convert.ToBase64String(Bytes);

    /// <returns>Null where the form keeps none, or something else.</returns>
    public static BroughtFile? Kept(string name, string text)
    {
        var bytes = new byte[text.Length / 4 * 3];
        return name.Length > 0 && Convert.TryFromBase64String(text, bytes, out var length) && length > 0 ? new(name, bytes[..length]) : null;
    }
}
