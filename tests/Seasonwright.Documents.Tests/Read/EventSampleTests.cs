using System.Globalization;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Every sample gives the result a careful human would read from it, see tests/Cases/events/ORIGIN.md.</summary>
public class EventSampleTests
{
    /// <summary>The expected results name questions after what they are about; the reader names them after their kind.</summary>
    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        ["Q-room"] = "Q-remark",
        ["Q-hall-shut"] = "Q-remark",
        ["Q-mornings"] = "Q-training",
        ["Q-inset"] = "Q-training",
        ["Q-may"] = "Q-month",
    };

    public static TheoryData<string, bool> Samples => new()
    {
        { "events-10-breaks.csv", true },
        { "events-10-breaks.csv", false },
        { "events-11-travel-legs.csv", true },
        { "events-12-notice.txt", true },
        { "events-12-notice.txt", false },
    };

    [Theory]
    [MemberData(nameof(Samples))]
    public void Rows_are_those_expected_column_by_column(string name, bool inSeason)
    {
        var list = Read(name, inSeason);
        Assert.Empty(list.Problems);
        var expected = EventCases.ExpectedRows(name);
        Assert.Equal(EventCases.Heading, string.Join(',', expected[0]));
        var rows = EventCases.Rows(list);
        Assert.Equal(string.Join('\n', expected.Skip(1).Select(row => string.Join('|', row.Take(9)))), string.Join('\n', rows.Select(row => row.Text)));
        foreach (var (row, wanted) in rows.Zip(expected.Skip(1)))
            Assert.Empty(wanted[9].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(KindOf).Except(row.Asks.Select(question => question.Kind), StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_question_expected_is_asked_with_as_many_ways_to_answer(string name, bool inSeason)
    {
        var list = Read(name, inSeason);
        foreach (var wanted in EventCases.Expected(name).GetProperty("questions").EnumerateArray())
        {
            var asked = list.Questions.FirstOrDefault(question => question.Kind == KindOf(wanted.GetProperty("id").GetString()!));
            Assert.NotNull(asked);
            Assert.True(asked.Options.Count + (asked.Free is null ? 0 : 1) >= wanted.GetProperty("options").GetArrayLength(), asked.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_line_is_a_row_or_told_as_skipped(string name, bool inSeason)
    {
        var list = Read(name, inSeason);
        // Our own files end with a line end; the expected results do not count the empty line behind it.
        var last = EventCases.Source(name).Lines.Count;
        var expected = EventCases.Expected(name).GetProperty("skipped").EnumerateArray().Select(skipped => skipped.GetProperty("line").GetInt32());
        Assert.Equal(expected, list.Skipped.Select(skipped => skipped.Line).Where(line => line != last || EventCases.Source(name).Lines[line - 1].Length > 0));
    }

    [Fact]
    public void The_legs_of_a_journey_are_those_expected()
    {
        const string Name = "events-11-travel-legs.csv";
        var expected = EventCases.Expected(Name).GetProperty("legs").EnumerateArray().Select(leg => string.Join(' ', new[] { "date", "dep", "arr", "arr_date", "zone_shift_h" }.Select(field => leg.TryGetProperty(field, out var value) ? $"{value}" : "")));
        var trip = Read(Name, true).Rows[0];
        Assert.Equal(string.Join("\n", expected), string.Join("\n", trip.Legs.Select(leg => string.Create(CultureInfo.InvariantCulture, $"{leg.Day:yyyy-MM-dd} {leg.Departs:HH\\:mm} {leg.Arrives:HH\\:mm} {leg.ArrivalDay:yyyy-MM-dd} {leg.ZoneShift}"))));
        Assert.Equal(("Harbour Vale", "Skagrund airport"), (trip.Legs[0].From, trip.Legs[4].To));
    }

    private static string KindOf(string id) => Kinds.GetValueOrDefault(id, id);

    // Week 1 starts on the first day of the summer break; 52 weeks.
    private static EventList Read(string name, bool inSeason) =>
        EventReader.Read(EventCases.Source(name), new EventReading(Season: inSeason ? new DaySpan(new(2026, 6, 28), new(2027, 6, 26)) : null));
}
