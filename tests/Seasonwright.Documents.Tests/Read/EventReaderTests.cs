using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

public class EventReaderTests
{
    private static readonly EventReading Season = new(Season: new DaySpan(new(2026, 6, 28), new(2027, 6, 27)));

    public static TheoryData<string> Samples { get; } = ["events-10-breaks.csv", "events-11-travel-legs.csv", "events-12-notice.txt"];

    [Fact]
    public void Never_throws_and_a_row_that_may_be_written_has_its_days() =>
        Gen.Select(SpanTexts.Any.Array[0, 6], Gen.OneOf(";", ",", "\t", " ", "|")).Sample((cells, join) =>
        {
            var list = EventReader.Read(SourceText.OfText("list", $"What{join}When\n{string.Join(join, cells)}\n{string.Join('\n', cells)}"), Season);
            Assert.All(list.Rows, row => Assert.True(row.State == RowState.Waiting || row.Days is not null));
        }, iter: 500);

    [Fact]
    public void Health_details_are_held_back_and_not_shown()
    {
        var list = EventReader.Read(SourceText.OfText("list", "* Camp 3-5 March\n* Ella knee surgery 4 March\n"), Season);
        Assert.Equal("Camp", Assert.Single(list.Rows).Title);
        Assert.Contains(list.Skipped, skip => skip is { Kind: "event-health", Line: 2, Text: "" });
    }
}
