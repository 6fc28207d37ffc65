using System.Text;
using Seasonwright.Core.Calendar;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>
/// Things with days on a sheet of their own, looked up into the weeks by formula: they keep their true days, whatever becomes of the
/// first day. The formulas hold only what every spreadsheet has had for decades.
/// </summary>
/// <param name="First">The name of the cells with their first days.</param>
/// <param name="Last">The name of the cells with their last days.</param>
/// <param name="Text">The name of the cells with the words for them.</param>
/// <param name="Items">In the order of the rows; without days where none are known.</param>
internal sealed record WeekList(string First, string Last, string Text, IReadOnlyList<(DaySpan? Days, string Words)> Items)
{
    private const int MostNamed = 12;

    // No spreadsheet takes a text of more than 32,767 letters; whoever reads one of 9,999 reads the sheet it comes from.
    private const int LongestText = 9_999;

    /// <summary>All things that touch a week, with semicolons between them.</summary>
    /// <param name="days">The week as it lies now.</param>
    /// <param name="row">Its row on the Year sheet.</param>
    public Cell In(DaySpan days, int row)
    {
        var most = Most;
        var formula = new StringBuilder("MID(");
        for (var n = 1; n <= most; n++)
            formula.Append(n == 1 ? "" : "&").Append(FormattableString.Invariant(
                $"IFERROR(\"; \"&INDEX({Text},SUMPRODUCT(SMALL(ROW({First})-{Sheet.HeadingRow}+1000000*(1-({First}<=$C{row})*({Last}>=$B{row})),{n}))),\"\")"));
        var count = FormattableString.Invariant($"SUMPRODUCT(({First}<=$C{row})*({Last}>=$B{row}))");
        formula.Append(FormattableString.Invariant($"&IF({count}>{most},\"; {Say("workbook.more", $"\"&({count}-{most})&\"")}\",\"\"),3,{LongestText})"));

        var there = Items.Where(item => item.Days is { } span && span.Overlaps(days)).Select(item => item.Words).ToList();
        var words = there.Count > most ? there.Take(most).Append(Say("workbook.more", there.Count - most)) : there;
        var told = string.Join("; ", words);
        return new Cell(told.Length > LongestText ? told[..LongestText] : told, SheetLooks.Wrapped, formula.ToString());
    }

    /// <summary>The most that can ever fall into one week, wherever the weeks begin; the rest of more than a dozen is counted.</summary>
    private int Most { get; } = Math.Clamp(Items.Select(item => item.Days).OfType<DaySpan>()
        .Select(span => new DaySpan(span.Last, span.Last.DayNumber > DateOnly.MaxValue.DayNumber - 6 ? DateOnly.MaxValue : span.Last.AddDays(6)))
        .Select(week => Items.Count(item => item.Days is { } days && days.Overlaps(week))).DefaultIfEmpty(1).Max(), 1, MostNamed);
}
