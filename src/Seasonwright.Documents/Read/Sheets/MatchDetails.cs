using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>Rows beside a row of matches that say more of them: "H/A", "Day", "Throw-off", "Competition".</summary>
/// <param name="rows">All rows of a workbook in their roles.</param>
internal sealed class MatchDetails(IReadOnlyList<SheetRow> rows)
{
    private static ColumnRole? RoleOf(string label) => HeadingWords.RoleOf(label) is { } role && role is ColumnRole.Venue or ColumnRole.Weekday or ColumnRole.Date or ColumnRole.KickOff or ColumnRole.Competition or ColumnRole.Round ? role : null;

    /// <summary>Guesses them: rows named so that hold something only where there is a match, and for most of the matches.</summary>
    public static List<DraftRow> Beside(List<DraftRow> rows) => rows.ConvertAll(row =>
        row.Guess != RowRole.Own || RoleOf(row.Label) is null || row.Entries.Count == 0 ? row
        : rows.Where(other => other.Sheet == row.Sheet && other.Guess == RowRole.Matches).Any(matches =>
            matches.Entries.Select(entry => entry.Days).ToHashSet() is var days && row.Entries.TrueForAll(entry => days.Contains(entry.Days)) && row.Entries.Count * 2 >= days.Count) ? row with { Guess = RowRole.Details } : row);

    /// <summary>The match as its cell says it, with what stands beside it where the cell is silent.</summary>
    public MatchCell Complete(MatchCell cell, SheetRow row, SheetEntry entry)
    {
        foreach (var (role, text) in Of(row).SelectMany(details => details.Entries.Where(other => other.Days == entry.Days).Select(other => (RoleOf(details.Label), other.Text))))
        {
            cell = role switch
            {
                ColumnRole.Venue when VenueText.Read(text) is var (venue, place) => cell with { Venue = cell.Venue ?? venue, Place = cell.Place ?? place },
                ColumnRole.KickOff when TimeText.Read(text) is { Sense: TimeSense.Known, Time: { } time } => cell with { KickOff = cell.KickOff ?? time },
                ColumnRole.Competition when ListWords.IsFriendly(text) => cell with { IsFriendly = true },
                ColumnRole.Competition when !TimeText.IsUnknown(text) => cell with { Competition = cell.Competition ?? text },
                ColumnRole.Round when !TimeText.IsUnknown(text) => cell with { Round = cell.Round ?? text },
                ColumnRole.Weekday or ColumnRole.Date when cell.Written is null && CalendarWords.Weekday(text) is { } weekday => cell with { Weekdays = cell.Weekdays.Append(weekday).Distinct().ToValueList() },
                ColumnRole.Weekday or ColumnRole.Date when DateText.Find(text) is { Kind: WrittenKind.Day } date => cell with { Written = cell.Written ?? date },
                _ => cell,
            };
        }
        return cell;
    }

    /// <summary>What stands in a row of details where there is no match.</summary>
    public IEnumerable<SheetEntry> Rest(SheetRow details) =>
        details.Entries.Where(entry => Owner(details) is not { } matches || matches.Entries.All(match => match.Days != entry.Days));

    private IEnumerable<SheetRow> Of(SheetRow matches) => rows.Where(row => row.Role == RowRole.Details && Owner(row)?.Key == matches.Key);

    // The row of matches that it follows, or the first behind it.
    private SheetRow? Owner(SheetRow details)
    {
        var here = rows.Where(row => row.Sheet == details.Sheet).ToList();
        var before = here.TakeWhile(row => row.Key != details.Key).LastOrDefault(row => row.Role == RowRole.Matches);
        return before ?? here.FirstOrDefault(row => row.Role == RowRole.Matches);
    }
}
