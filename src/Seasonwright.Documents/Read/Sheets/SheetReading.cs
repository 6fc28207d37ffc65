using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>
/// A coach's own year workbook as it would come into a season: its rows with what they are taken for, and everything that is no row, so
/// that nothing of it is dropped silently. Nothing is certain before the coach has seen it.
/// </summary>
/// <param name="Name">The file's name without its folder.</param>
/// <param name="Team">As the title says it; null when none is told.</param>
/// <param name="Grid">The weeks; null while no day is known, and then there are no rows.</param>
/// <param name="Layouts">How each sheet that holds a part of the year is laid out.</param>
/// <param name="Rows">In the order of the workbook.</param>
/// <param name="Remarks">What people wrote into notes at cells, without those held back.</param>
/// <param name="HeldBack">Where something tells of somebody's health; never what.</param>
/// <param name="LeftOut">Cells and lines that became no row, and why.</param>
/// <param name="Problems">If not empty, there are no rows.</param>
public sealed record SheetReading(
    string Name,
    string? Team,
    WeekGrid? Grid,
    ValueList<SheetLayout> Layouts,
    ValueList<SheetRow> Rows,
    ValueList<SheetRemark> Remarks,
    ValueList<HeldBack> HeldBack,
    ValueList<LeftOut> LeftOut,
    ValueList<Question> Questions,
    ValueList<Answered> Answered,
    ValueList<Problem> Problems)
{
    /// <summary>Nothing can be taken before an answer.</summary>
    public bool IsBlocked => Problems.Count == 0 && Grid is null;
}

/// <summary>How one sheet is laid out.</summary>
/// <param name="Places">Weeks, or days where it has a place for each.</param>
/// <param name="DatesAt">The row or column that says the dates, for instance "row 7".</param>
public sealed record SheetLayout(string Sheet, SheetForm Form, int Places, string DatesAt);

/// <summary>How a sheet lays out a year.</summary>
public enum SheetForm
{
    WeeksAcross,
    WeeksDown,

    /// <summary>A column for each month and a row for each day of a month.</summary>
    DaysDownMonthsAcross,

    /// <summary>A list of matches with a date in each row.</summary>
    MatchList,
}

/// <summary>What a row of the sheet is taken for. A row may as well be a column: whatever runs along the weeks.</summary>
public enum RowRole
{
    /// <summary>A track of the coach's own; whatever is not known otherwise.</summary>
    Own,
    Matches,
    Tests,
    Phases,
    Blocks,

    /// <summary>The load target of each week, in per cent of the reference week.</summary>
    Load,

    /// <summary>Sessions of one quality in a week, 1 to 3.</summary>
    Emphasis,
    Events,

    /// <summary>Says more of the matches in the row beside it: home or away, the day, the time, what is played for.</summary>
    Details,

    /// <summary>Not taken in.</summary>
    Leave,
}

/// <summary>A row offered.</summary>
/// <param name="Key">Names it in a map, the same each time the file is read: sheet and line, "Plan!13" or "Plan!G".</param>
/// <param name="Label">As written; the key's end where it has none.</param>
/// <param name="Role">The coach's choice, or the guess.</param>
/// <param name="Entries">What stands in it, in the order of days. For phases and blocks one entry is one run.</param>
/// <param name="Matches">What its entries say as matches; empty in any other role.</param>
public sealed record SheetRow(string Key, string Sheet, string Label, RowRole Role, ValueList<SheetEntry> Entries, ValueList<SheetMatch> Matches)
{
    /// <summary>What its words stand for by the legend, for instance H for hard; null where no legend says so.</summary>
    public IReadOnlyDictionary<string, string>? Meanings { get; init; }

    /// <summary>What is left of a row of matches beside them; it goes with that row and has no role to choose.</summary>
    public bool IsRest => Key.EndsWith('+');

    /// <summary>A sheet that is a list of matches: it is taken as one, or left.</summary>
    public bool IsList => Key.EndsWith(ListedHere.KeyEnd, StringComparison.Ordinal);

    /// <summary>Whether every entry is a number.</summary>
    public bool IsNumbers => Entries.Count > 0 && Entries.All(entry => entry.Number is not null);

    /// <summary>Figures up to 10 that are no per cent: perhaps tenths of the whole.</summary>
    public bool IsOfTen => IsNumbers && Entries.All(entry => entry.Number <= 10 && !entry.Text.EndsWith('%'));
}

/// <summary>What one cell says.</summary>
/// <param name="Days">The days its place covers.</param>
/// <param name="Text">As shown, tidy; a colour's name where only a colour stands there.</param>
/// <param name="Number">The figure where the cell holds nothing else; never of an empty cell or an error.</param>
/// <param name="Fill">The colour behind it.</param>
public sealed record SheetEntry(CellAt Cell, DaySpan Days, string Text, double? Number = null, Rgb? Fill = null)
{
    /// <summary>The lines of its text, as written in the cell or parted by semicolons; one as a rule.</summary>
    public ValueList<string> Lines { get; init; } = new([Text]);
}

/// <summary>A match as a cell says it.</summary>
/// <param name="Cell">Where it stands.</param>
/// <param name="Window">The days of its place in the sheet; it falls on one of them unless <paramref name="Day"/> says otherwise.</param>
/// <param name="Day">Null while only the window is known.</param>
/// <param name="Status">Confirmed where the day is told, provisional where it is not.</param>
/// <param name="Condition">What must happen first, as written; only for conditional matches.</param>
/// <param name="IsTournament">It reads as a tournament rather than one match.</param>
/// <param name="IsWritten">False while a question must be answered first.</param>
/// <param name="Ask">Ids of the open questions it needs answered.</param>
public sealed record SheetMatch(
    string Sheet,
    CellAt Cell,
    DaySpan Window,
    string Text,
    string? Opponent,
    Venue? Venue,
    DateOnly? Day,
    TimeOnly? KickOff,
    MatchStatus Status,
    string? Competition,
    Importance Importance,
    string? Place,
    string? Condition,
    bool IsTournament,
    bool IsWritten,
    ValueList<string> Ask);

/// <summary>A note that somebody wrote at a cell.</summary>
/// <param name="Days">Null outside the weeks.</param>
public sealed record SheetRemark(string Sheet, CellAt Cell, DaySpan? Days, string Text);

/// <summary>A cell, or the note at it, that tells of somebody's health. Its words stay in the file.</summary>
/// <param name="IsRemark">The note at the cell, not the cell.</param>
public sealed record HeldBack(string Sheet, CellAt Cell, bool IsRemark);

/// <summary>Something of the workbook that became no row, and why.</summary>
/// <param name="Where">A cell, "row 20", "column I", or empty for the whole sheet.</param>
/// <param name="Kind">For programs, for instance <c>error</c>, <c>legend</c>, <c>hidden-sheet</c>.</param>
/// <param name="Why">For people.</param>
public sealed record LeftOut(string Sheet, string Where, string Text, string Kind, string Why)
{
    /// <summary>The key of a row that is left by its name or its formulas alone, to be given a role all the same; else null.</summary>
    public string? Row { get; init; }

    internal static LeftOut Of(string sheet, string where, string text, string kind) =>
        new(sheet, where, Spelling.Cut(Spelling.Tidy(text), Skipped.LongestText), kind, Sentences.Say($"sheet.left.{kind}"));
}
