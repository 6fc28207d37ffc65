using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>Every test day by its true day.</summary>
internal static class TestsSheet
{
    private const string Day = "TestDay";
    private const string Words = "TestText";

    public static (Sheet Sheet, WeekList List) Of(Season season, SheetLooks looks)
    {
        List<TestDay> tests = [.. season.AllTestDays];
        var sheet = new ListSheet<TestDay>("Tests", tests)
            .Week(season, test => test.Day)
            .Day(Say("workbook.day"), looks.LongDay, test => test.Day, Day)
            .Text(Say("workbook.battery"), 40, test => test.Battery)
            .Text(Say("workbook.for"), 20, test => test.For)
            .Text(Say("workbook.part"), 18, test => test.Part)
            .Add(Say("workbook.in-year"), 40, (test, row) => new(Told(test), SheetLooks.Wrapped, FormattableString.Invariant($"IF(B{row}=\"\",\"\",C{row}&IF(D{row}=\"\",\"\",\" (\"&D{row}&\")\"))")), Words);
        return (sheet.Sheet(Say("workbook.tests.about")), new WeekList(Day, Day, Words, [.. tests.Select(test => ((DaySpan?)DaySpan.Of(test.Day), Told(test)))]));
    }

    private static string Told(TestDay test) => PlainText.Clean(test.Battery) + (PlainText.Clean(test.For ?? "") is { Length: > 0 } people ? $" ({people})" : "");
}
