using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>
/// A season as a workbook (Office Open XML, ISO/IEC 29500) that goes on living in any spreadsheet: change the cell named FirstDay and
/// the weeks, their months and ISO weeks and what falls into them follow; matches, events and tests keep their true days.
/// </summary>
public static class YearWorkbook
{
    /// <summary>The same season, setup, edition and choices give the same bytes. No text in it is ever run as a formula.</summary>
    public static byte[] Write(Season season, Setup setup, Edition edition, WorkbookChoices choices)
    {
        var shown = choices.KeyMatches ? season : season.WithoutKeyMatches();
        var looks = new SheetLooks(setup.Locale);
        var (matches, matchList) = MatchesSheet.Of(shown, choices, looks);
        var (events, eventList) = EventsSheet.Of(shown, choices, looks);
        var (tests, testList) = TestsSheet.Of(shown, looks);
        var (notes, noteList) = NotesSheet.Of(shown, looks);
        var hasNotes = choices.Notes && noteList.Items.Count > 0;
        Sheet?[] sheets =
        [
            YearSheet.Of(shown, setup, choices, looks, new WeekLists(matchList, eventList, testList, hasNotes ? noteList : null)),
            matches, events, tests, hasNotes ? notes : null, DaysSheet.Of(shown, looks), GoalsSheet.Of(shown, setup, looks),
            OutsideSheet.Of(shown, setup, choices, looks), AboutSheet.Of(setup, edition),
        ];
        return WorkbookFile.Write([.. sheets.OfType<Sheet>()], SeasonName.Of(shown, setup), edition, setup.Locale);
    }
}
