using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Lists unlike the samples, as schools, clubs, federations and parents write them; see tests/Cases/events/ORIGIN.md.</summary>
public class EventOwnCaseTests
{
    private static readonly DaySpan Season = new(new(2026, 6, 28), new(2027, 6, 26));

    public static TheoryData<string> Lists => [.. Directory.GetFiles(EventCases.PathOf("own"), "*.expected").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Lists))]
    public void It_is_read_as_a_careful_human_would(string name)
    {
        var expected = File.ReadAllText(EventCases.PathOf($"own/{name}.expected")).TrimEnd('\n');
        var source = EventCases.Source($"own/{name}");
        var isInSeason = !expected.StartsWith("season none", StringComparison.Ordinal);
        var list = EventReader.Read(source, new EventReading(Season: isInSeason ? Season : null));
        Assert.Empty(list.Problems);
        List<string> read = isInSeason ? [] : ["season none"];
        if (list.IsBlocked) read.Add("blocked");
        read.AddRange(EventCases.Rows(list).Select(row => $"{row.Text}|{string.Join(' ', row.Asks.Select(question => question.Kind).Distinct(StringComparer.Ordinal))}"));
        read.Add($"skipped {string.Join(' ', list.Skipped.Select(skipped => skipped.Line).Where(line => line < source.Lines.Count || source.Lines[line - 1].Length > 0))}");
        Assert.Equal(expected, string.Join('\n', read));
    }
}
