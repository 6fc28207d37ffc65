using System.Globalization;
using Seasonwright.Documents.Read;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Every sample gives the result a careful human would read from it, see tests/Cases/fixtures/samples/ORIGIN.md.</summary>
public class FixtureSampleTests
{
    public static TheoryData<string, string?> Samples => new()
    {
        { "samples/fixtures-01-league-ids.csv", "Harbour Vale" },
        { "samples/fixtures-02-semicolon-cp1252.csv", null },
        { "samples/fixtures-03-no-year-utf16.txt", null },
        { "samples/fixtures-04-school-rugby-dmy.csv", "1st XV" },
        { "samples/fixtures-05-which-way-round.csv", null },
        { "samples/fixtures-06-pasted-rounds.txt", "Harbour Vale" },
        { "samples/fixtures-07-cup-windows.csv", null },
        { "samples/fixtures-08-update-of-01.csv", "Harbour Vale" },
        { "samples/fixtures-13-month-first.csv", "Tellwood" },
        { "samples/fixtures-14-list.xlsx", null },
    };

    [Theory]
    [MemberData(nameof(Samples))]
    public void Rows_are_those_expected_column_by_column(string path, string? team)
    {
        var read = FixtureCases.Read(path, team, Remembered(path));
        Assert.Empty(read.Problems);
        var expected = FixtureCases.ExpectedRows(path);
        Assert.Equal(FixtureCases.Heading.Replace(',', '|'), expected[0]);
        Assert.Equal(string.Join('\n', expected.Skip(1).Select(WithoutAsk)), string.Join('\n', read.Rows.Select(FixtureCases.Text).Select(WithoutAsk)));
        foreach (var (row, wanted) in read.Rows.Zip(expected.Skip(1)))
            Assert.Empty(Ask(wanted).Except(row.Ask, StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_question_expected_is_asked(string path, string? team)
    {
        var read = FixtureCases.Read(path, team, Remembered(path));
        var expected = FixtureCases.Expected(path).GetProperty("questions").EnumerateArray().Select(q => q.GetProperty("id").GetString()!).Where(id => id is not ("Q-lost-result" or "Q-no-id"));
        Assert.Empty(expected.Except(read.Questions.Select(question => question.Id), StringComparer.Ordinal));
        Assert.All(read.Questions.Where(question => question.Kind != "Q-team"), question => Assert.All(question.Lines, line => Assert.Contains(read.Rows, row => row.Line == line)));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_line_is_a_row_or_told_as_skipped(string path, string? team)
    {
        var read = FixtureCases.Read(path, team, Remembered(path));
        // Our own files end with a line end; the expected results do not count the empty line behind it.
        var last = FixtureCases.Source(path).Lines.Count;
        var expected = FixtureCases.Expected(path).GetProperty("skipped").EnumerateArray().Select(skipped => skipped.TryGetProperty("line", out var at) ? at.GetInt32() : skipped.GetProperty("row").GetInt32());
        // Of a workbook they begin below its row of headings.
        var heading = FixtureCases.Expected(path).GetProperty("reads").TryGetProperty("header_row", out var row) ? row.GetInt32() : 0;
        Assert.Equal(expected, read.Skipped.Select(skipped => skipped.Line).Where(line => line > heading && (heading == 0 || FixtureCases.Source(path).Lines[line - 1].Length > 0) && (line != last || FixtureCases.Source(path).Lines[line - 1].Length > 0)));
    }

    [Fact]
    public void Both_readings_of_an_open_date_order_are_as_expected()
    {
        const string Path = "samples/fixtures-05-which-way-round.csv";
        var open = FixtureCases.Read(Path);
        Assert.True(open.IsBlocked);
        var expected = FixtureCases.Expected(Path).GetProperty("if_answered").EnumerateArray().ToList();
        foreach (var (answer, reading) in new[] { ("day-first", "day_first"), ("month-first", "month_first") })
        {
            var read = FixtureCases.Read(Path, answers: Answers.None.With("Q-order", answer));
            Assert.False(read.IsBlocked);
            Assert.Equal(expected.Select(row => DateOnly.ParseExact(row.GetProperty(reading).GetString()!, "O", CultureInfo.InvariantCulture)), read.Rows.Select(row => row.Day!.Value));
        }
    }

    private static string WithoutAsk(string row) => row[..row.LastIndexOf('|')];

    // What only a comparison with an earlier list can ask is tested with the comparison.
    private static IEnumerable<string> Ask(string row) => row[(row.LastIndexOf('|') + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(id => id is not ("Q-lost-result" or "Q-no-id"));

    // The answer given for 01 is remembered by its key for 08.
    private static Answers? Remembered(string path) => path.Contains("-08-", StringComparison.Ordinal)
        ? Answers.None.With(FixtureCases.Read("samples/fixtures-01-league-ids.csv", "Harbour Vale").Questions.Single(q => q.Kind == "Q-spelling").Key, "two") : null;
}
