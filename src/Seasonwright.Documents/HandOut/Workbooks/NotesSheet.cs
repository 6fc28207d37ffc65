using Seasonwright.Core.Calendar;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Notes over days, by their true days.</summary>
internal static class NotesSheet
{
    private const string First = "NoteFirst";
    private const string Last = "NoteLast";
    private const string Words = "NoteText";

    public static (Sheet Sheet, WeekList List) Of(Season season, SheetLooks looks)
    {
        List<Note> notes = [.. season.Facts.All(SeasonFacets.Note).Select(note => note.Value).OrderBy(note => note.Days).ThenBy(note => note.Id.Text, StringComparer.Ordinal)];
        var sheet = new ListSheet<Note>("Notes", notes)
            .Week(season, note => note.Days)
            .Day(Say("workbook.first"), looks.LongDay, note => note.Days.First, First)
            .Day(Say("workbook.last"), looks.LongDay, note => note.Days.Last, Last)
            .Text(Say("workbook.note"), 80, note => note.Text, Words);
        return (sheet.Sheet(Say("workbook.notes.about")), new WeekList(First, Last, Words, [.. notes.Select(note => ((DaySpan?)note.Days, PlainText.Clean(note.Text)))]));
    }
}
