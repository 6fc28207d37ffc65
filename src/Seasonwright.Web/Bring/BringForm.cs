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

    /// <summary>Whether the file was chosen just now: nothing was said of it yet.</summary>
    public bool IsNew { get; private init; }

    public static BringForm Empty(string team) => new(null, SheetMap.Empty.Roles, FormAnswers.Of(Answers.None), team, "");

    public static string RoleField(string row) => Role + row;

    public static async Task<BringForm> ReadAsync(Posted posted)
    {
        var roles = SheetMap.Empty.Roles;
        foreach (var (row, word) in posted.Starting(Role))
            if (Enum.TryParse<RowRole>(word, out var role) && Enum.IsDefined(role)) roles = roles.SetItem(row, role);
        var chosen = await posted.FileAsync("file") is var (name, bytes) ? new BroughtFile(name, bytes) : BroughtFile.Kept(posted["kept-name"], posted.Raw("kept"));
        // What was said of another file says nothing of this one.
        var isNew = posted.File("file") is not null;
        return new(chosen, isNew ? SheetMap.Empty.Roles : roles, isNew ? FormAnswers.Of(Answers.None) : FormAnswers.Read(posted, Answers.None), posted["team"], isNew ? "" : posted["team-name"]) { IsNew = isNew };
    }

    /// <summary>Reads the workbook with everything offered taken as answered.</summary>
    public SheetReading? Read()
    {
        if (File is null) return null;
        var book = Workbook.Read(File.Name, File.Bytes);
        return SheetReader.OrElsewhere(Said.Settle(answers =>
        {
            var read = SheetReader.Read(book, new SheetMap(Roles, answers));
            return (read, read.Questions);
        }).Read, File.Bytes);
    }
}
