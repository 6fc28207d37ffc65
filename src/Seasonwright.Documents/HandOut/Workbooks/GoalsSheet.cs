using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>What was agreed with the head coach.</summary>
internal static class GoalsSheet
{
    public static Sheet Of(Season season, Setup setup, SheetLooks looks) => new ListSheet<Goal>("Goals", [.. season.Goals])
        .Number(Say("workbook.goal"), 8, SheetLooks.Count, goal => goal.Rank)
        .Text(Say("workbook.measure"), 44, goal => goal.Measure)
        .Number(Say("workbook.from"), 10, SheetLooks.Number with { Side = CellSide.Middle }, goal => goal.From)
        .Number(Say("workbook.to"), 10, SheetLooks.Number with { Side = CellSide.Middle }, goal => goal.To)
        // Without a day of its own it is the season's end, wherever that comes to lie.
        .Add(Say("workbook.by"), 16, (goal, _) => goal.By is { } by ? new(by, looks.LongDay) : season.Days is { } days ? new(days.Last, looks.LongDay, Formulas.LastDay) : new(null, looks.LongDay))
        .Text(Say("workbook.quality"), 24, goal => goal.Quality is { } quality ? setup.NameOf(quality) : null)
        .Sheet(Say("workbook.goals.about"));
}
