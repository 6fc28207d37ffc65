using System.Text.Json;
using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Broken lists of events, in tests/Cases/events/malformed.jsonl: problems in words, no throw, no half of a list.</summary>
public class EventFaultTests
{
    private static readonly EventReading Season = new(Season: new DaySpan(new(2026, 6, 28), new(2027, 6, 26)));

    public static TheoryData<string> Cases => [.. File.ReadLines(EventCases.PathOf("malformed.jsonl"))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_list_is_told_and_never_half_read(string line)
    {
        using var json = JsonDocument.Parse(line);
        var source = Source(json.RootElement);
        var list = EventReader.Read(source, Season);
        AssertWhole(source, list);
        Assert.Equal(json.RootElement.GetProperty("expect").GetString(), Said(list));
    }

    [Fact]
    public void Any_text_is_read_whole_or_told_line_by_line() => Texts.Sample(text =>
    {
        var source = SourceText.OfText("list", text);
        var list = EventReader.Read(source, Season);
        AssertWhole(source, list);
        AssertWhole(source, EventReader.Read(source, new EventReading()));
        var update = EventUpdate.Compare([], [], list);
        if (!list.IsBlocked) Assert.True(update.Changes.Count >= list.Rows.Count && update.TestDays.Count >= list.TestDays.Count);
    }, iter: 2000);

    /// <summary>Which no JSON file can hold, but a paste can.</summary>
    [Fact]
    public void Half_a_letter_pasted_is_told() => Assert.Equal("problem binary:2", Said(EventReader.Read(SourceText.OfText("list", "What;When;Who\nCamp \ud800;5 Feb 2027;x\n"), Season)));

    [Fact]
    public void No_bytes_make_the_reader_throw() => Gen.Byte.Array[0, 300].Sample(bytes =>
    {
        var source = SourceText.OfBytes("list", bytes);
        AssertWhole(source, EventReader.Read(source, Season));
    }, iter: 1000);

    private static readonly Gen<string> Texts = Gen.Select(
        Gen.OneOf("", "What;When;Who;Remark\n", "no,type,what,start,end,leg,from,to,dep,arr,remarks\n", "Event\tFrom\tTo\tTraining\n", "Term dates 2026/27\n"),
        Gen.Select(Gen.OneOf(SpanTexts.Any, Gen.OneOf("Camp", "* Exams", "hall shut", "3 players", "no training", "cancelled", "travel", "1", "knee injury", "50 %")), Gen.Frequency((4, Gen.OneOf(";", ",", "\t", " ")), (3, Gen.Const("\n")), (1, Gen.OneOf("\"", "\n\n", "(", ")")))).Array[0, 30],
        (heading, pieces) => heading + string.Concat(pieces.Select(piece => piece.Item1 + piece.Item2)));

    /// <summary>Either problems with their words and no rows, or every line is a row, part of one, or told as skipped.</summary>
    private static void AssertWhole(SourceText source, EventList list)
    {
        if (list.Problems.Count > 0)
        {
            Assert.All(list.Problems, problem => Assert.True(problem.What.Length > 0 && problem.Mend.Length > 0));
            Assert.Equal((0, 0, true), (list.Rows.Count, list.TestDays.Count, list.IsBlocked));
            return;
        }
        var lines = source.Text.TrimStart().StartsWith("BEGIN:VCALENDAR", StringComparison.OrdinalIgnoreCase) ? FixtureCases.EntryLines(source)
            : list.Reads.Delimiter is null ? Enumerable.Range(1, source.Lines.Count) : CellTable.Read(source).Rows.Select(row => row.Line);
        var told = list.Rows.SelectMany(row => row.LegLines.Prepend(row.Line)).Concat(list.TestDays.Select(row => row.Line)).Concat(list.Skipped.Select(skipped => skipped.Line)).ToHashSet();
        Assert.DoesNotContain(lines, line => !told.Contains(line));
        Assert.All(list.Rows, row => Assert.True(row.State == RowState.Waiting ? list.QuestionsOf(row).Any() : row.Days is not null && row.Runs.Any(), $"{row}"));
        Assert.All(list.Rows, row => Assert.True(row.Ask.All(ask => list.Questions.Any(question => question.Id == ask))));
        Assert.All(list.Questions, question => Assert.True(question.Text.Length > 0 && question.UntilAnswered.Length > 0 && (question.Options.Count > 0 || question.Free is not null)));
    }

    /// <summary>What came of it, in one line: problems with their lines; or rows, those that wait, questions and what was skipped.</summary>
    private static string Said(EventList list)
    {
        if (list.Problems.Count > 0) return $"problem {string.Join(' ', list.Problems.Select(problem => problem.Line is { } line ? $"{problem.Id}:{line}" : problem.Id))}";
        var rows = EventCases.Rows(list).Select(row => row.Text.Split('|')).Select(cells => $"{cells[2]} {cells[3]}..{cells[4]}".Trim()).ToList();
        var first = rows.Count switch { 0 => "no row", 1 or 2 or 3 => string.Join(", ", rows.Select(row => row.Length > 80 ? row[..30] + "~" + row[^30..] : row)), var count => $"{count} rows" };
        var asks = string.Join(' ', list.Questions.Select(question => question.Kind).Distinct(StringComparer.Ordinal));
        var skipped = string.Join(' ', list.Skipped.GroupBy(skip => skip.Kind, StringComparer.Ordinal).Select(kind => kind.Count() == 1 ? $"{kind.Key}:{kind.Single().Line}" : $"{kind.Key}x{kind.Count()}"));
        return $"{first}; {list.Rows.Count(row => row.State == RowState.Waiting)} waiting; {asks}; {skipped}";
    }

    private static SourceText Source(JsonElement fault) => fault.TryGetProperty("base64", out var bytes) ? SourceText.OfBytes("list", bytes.GetBytesFromBase64())
        : SourceText.OfText("list", fault.TryGetProperty("text", out var text) ? text.GetString()! : string.Concat(fault.GetProperty("repeat").EnumerateArray().Select(part => string.Concat(Enumerable.Repeat(part[0].GetString(), part[1].GetInt32())))));
}
