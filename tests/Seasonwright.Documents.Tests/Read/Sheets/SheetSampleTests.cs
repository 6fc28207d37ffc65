using System.Globalization;
using System.Text.Json;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read.Sheets;

/// <summary>Every sample workbook gives what a careful human reads from it, see tests/Cases/workbooks/README.md.</summary>
public class SheetSampleTests
{
    /// <summary>The expected results name questions after what they are about; the reader names them after their kind. Null: told and not asked.</summary>
    private static readonly Dictionary<string, string?> Kinds = new(StringComparer.Ordinal)
    {
        ["workbook-01-weeks-across/Q-x"] = "Q-sessions",
        ["workbook-02-weeks-down/Q-oda"] = "Q-twice",
        ["workbook-02-weeks-down/Q-exams"] = "Q-events",
        // Health is held back without a question: where it stands is told.
        ["workbook-02-weeks-down/Q-medical"] = null,
        ["workbook-03-several-sheets/Q-exams"] = "Q-events",
        // Real dates under a month-first format are told by their weeks and not asked.
        ["workbook-04-colours-only/Q-dates"] = null,
        ["workbook-05-days-down/Q-final"] = "Q-cond",
        // The name of a colour is the legend's.
        ["workbook-05-days-down/Q-legend"] = null,
    };

    public static TheoryData<string> Samples => new("workbook-01-weeks-across", "workbook-02-weeks-down", "workbook-03-several-sheets", "workbook-04-colours-only", "workbook-05-days-down");

    public static TheoryData<string> InBothFormats => [.. Samples.Select(row => row.Data).SelectMany(name => new[] { $"samples/{name}.xlsx", $"old/{name}.xls" })];

    [Theory]
    [MemberData(nameof(InBothFormats))]
    public void The_weeks_are_those_expected(string file)
    {
        var (read, expected) = (Read(file), Expected(file));
        Assert.Empty(read.Problems);
        if (!expected.TryGetProperty("weeks", out var listed))
        {
            Assert.StartsWith($"{read.Grid!.Value.FirstDay:yyyy-MM-dd}", expected.GetProperty("first_day").GetString(), StringComparison.Ordinal);
            return;
        }
        var weeks = listed.EnumerateArray().ToList();
        Same(weeks.Select(week => $"{week.GetProperty("week")} {week.GetProperty("from")} {week.GetProperty("to")}"), Enumerable.Range(1, read.Grid!.Value.Count).Select(number => $"{number} {read.Grid.Value.Week(number).First:yyyy-MM-dd} {read.Grid.Value.Week(number).Last:yyyy-MM-dd}"));
    }

    [Theory]
    [MemberData(nameof(InBothFormats))]
    public void Phases_and_blocks_are_those_expected(string file)
    {
        var (read, expected) = (Read(file), Expected(file));
        foreach (var (role, name) in new[] { (RowRole.Phases, "phases"), (RowRole.Blocks, "blocks") })
        {
            if (!expected.TryGetProperty(name, out var wanted)) continue;
            var runs = read.Rows.Where(row => row.Role == role).SelectMany(row => row.Entries).Select(run => $"{run.Text} {read.Grid!.Value.NumberOf(run.Days.First)}-{read.Grid.Value.NumberOf(run.Days.Last)}");
            if (wanted[0].TryGetProperty("from", out _))
                Same(wanted.EnumerateArray().Select(run => $"{Named(run)} {run.GetProperty("from")} {run.GetProperty("to")}"), read.Rows.Where(row => row.Role == role).SelectMany(row => row.Entries).Select(run => $"{run.Text} {run.Days.First:yyyy-MM-dd} {run.Days.Last:yyyy-MM-dd}"));
            if (!wanted[0].TryGetProperty("weeks", out _)) continue;
            Same(wanted.EnumerateArray().Select(run => $"{run.GetProperty("name")} {run.GetProperty("weeks")[0]}-{run.GetProperty("weeks")[1]}"), runs);
        }
    }

    [Theory]
    [MemberData(nameof(InBothFormats))]
    public void Matches_are_those_expected(string file)
    {
        var (read, expected) = (Read(file), Expected(file));
        var matches = read.Rows.SelectMany(row => row.Matches).OrderBy(match => match.Day ?? match.Window.First).ThenBy(match => match.Cell).ToList();
        string Of(JsonElement match, string field) => match.TryGetProperty(field, out var value) ? $"{value}" : "";
        Assert.Equal(
            string.Join('\n', expected.GetProperty("matches").EnumerateArray().Select(match => (Week: WeekOf(match, read), Match: match)).Select(row => string.Join('|', row.Week, Of(row.Match, "opponent"), Of(row.Match, "venue"), Of(row.Match, "date"), Of(row.Match, "kickoff"), Of(row.Match, "status") is "moved away: not a match day" ? "postponed" : Of(row.Match, "status") is "" ? "confirmed" : Of(row.Match, "status"),
                Competition(Of(row.Match, "competition"), Of(row.Match, "importance")), Of(row.Match, "importance") is "" ? Of(row.Match, "competition").Equals("friendly", StringComparison.OrdinalIgnoreCase) ? "friendly" : "regular" : Of(row.Match, "importance"))).Order(StringComparer.Ordinal)),
            string.Join('\n', matches.Select(match => string.Join('|', read.Grid!.Value.NumberOf(match.Day ?? match.Window.First), match.Opponent, Lower(match.Venue), Day(match.Day), match.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture), Lower(match.Status), Competition(match.Competition ?? "", Lower(match.Importance)), Lower(match.Importance))).Order(StringComparer.Ordinal)));
        // Each match says what it waits for.
        foreach (var wanted in expected.GetProperty("matches").EnumerateArray())
        {
            var asks = Of(wanted, "ask").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(id => KindOf(file, id)).OfType<string>();
            var match = matches.First(match => match.Opponent == (Of(wanted, "opponent") is { Length: > 0 } opponent ? opponent : null) && read.Grid!.Value.NumberOf(match.Day ?? match.Window.First) == WeekOf(wanted, read));
            Assert.Empty(asks.Except(match.Ask.Select(id => read.Questions.First(question => question.Id == id).Kind), StringComparer.Ordinal).Except(match.Status == MatchStatus.Conditional ? ["Q-day"] : [], StringComparer.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(InBothFormats))]
    public void Rows_of_its_own_are_those_expected(string file)
    {
        var (read, expected) = (Read(file), Expected(file));
        foreach (var own in expected.GetProperty("own_rows").EnumerateObject())
        {
            var row = Assert.Single(read.Rows, row => row.Label.Equals(own.Name, StringComparison.OrdinalIgnoreCase) && row.Role == RowRole.Own);
            Same(own.Value.EnumerateObject().Select(entry => $"{entry.Name} {entry.Value}"), row.Entries.Select(entry => entry.Days.Length == 1 ? $"{entry.Days.First:yyyy-MM-dd} {entry.Text}" : $"{read.Grid!.Value.NumberOf(entry.Days.First)} {entry.Text}"));
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_question_expected_is_asked_with_as_many_ways_to_answer(string name)
    {
        var file = $"samples/{name}.xlsx";
        var read = Read(file);
        foreach (var wanted in Expected(file).GetProperty("questions").EnumerateArray())
        {
            if (KindOf(file, wanted.GetProperty("id").GetString()!) is not { } kind) continue;
            var asked = read.Questions.FirstOrDefault(question => question.Kind == kind);
            Assert.True(asked is not null, $"{kind} is not asked; {string.Join(", ", read.Questions.Select(question => question.Id))} are.");
            Assert.True(asked.Options.Count + (asked.Free is null ? 0 : 1) >= wanted.GetProperty("options").GetArrayLength(), asked.Text);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void What_tells_of_health_is_nowhere_in_what_is_read(string name)
    {
        var read = Read($"samples/{name}.xlsx");
        var text = JsonSerializer.Serialize(read, Plain);
        var expected = Expected($"samples/{name}.xlsx");
        foreach (var word in new[] { "physio", "surgery", "shoulder", "Do not tell" }) Assert.DoesNotContain(word, text, StringComparison.OrdinalIgnoreCase);
        Same(expected.TryGetProperty("medical", out _) ? ["H12 cell", "H12 note"] : [], read.HeldBack.Select(held => $"{held.Cell} {(held.IsRemark ? "note" : "cell")}"));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Notes_at_cells_and_errors_are_told(string name)
    {
        var (read, expected) = (Read($"samples/{name}.xlsx"), Expected($"samples/{name}.xlsx"));
        if (expected.TryGetProperty("comments", out var comments))
            Same(comments.EnumerateArray().Select(comment => $"{comment.GetProperty("cell")} {comment.GetProperty("text")}").Order(StringComparer.Ordinal), read.Remarks.Select(remark => $"{remark.Cell} {remark.Text}").Order(StringComparer.Ordinal));
        if (expected.TryGetProperty("errors", out var errors))
            Same(errors.EnumerateArray().Select(error => $"{error.GetProperty("cell").GetString()!.Split('!')[^1]} {error.GetProperty("shown")}"), read.LeftOut.Where(left => left.Kind == "error").Select(left => $"{left.Where} {left.Text}"));
    }

    /// <summary>"Nothing silently dropped": each cell with words or a figure is an entry, a heading of dates, a label, or told.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void No_cell_is_dropped_silently(string name)
    {
        var book = Workbook.Read(name, File.ReadAllBytes(PathOf($"samples/{name}.xlsx")));
        var read = SheetReader.Read(book, SheetMap.Empty);
        var told = read.LeftOut.Select(left => left.Where).Concat(read.Layouts.Select(layout => layout.DatesAt)).ToHashSet(StringComparer.Ordinal);
        var held = read.HeldBack.Select(held => (held.Sheet, held.Cell)).ToHashSet();
        foreach (var sheet in book.Sheets.Where(sheet => !sheet.IsHidden))
        {
            var entries = read.Rows.Where(row => row.Sheet == sheet.Name).SelectMany(row => row.Entries.Select(entry => entry.Cell).Concat(row.Matches.Select(match => match.Cell))).ToHashSet();
            if (told.Contains("") && read.LeftOut.Any(left => left.Sheet == sheet.Name && left.Where.Length == 0)) continue;
            var form = read.Layouts.First(layout => layout.Sheet == sheet.Name).Form;
            var down = form == SheetForm.WeeksDown;
            var known = entries.Select(cell => down ? cell.Column : cell.Row).ToHashSet();
            foreach (var cell in sheet.Cells.Where(cell => !cell.IsEmpty && !entries.Contains(cell.At) && !held.Contains((sheet.Name, cell.At))))
            {
                if (told.Contains($"row {cell.Row}") || told.Contains($"column {CellAt.ColumnName(cell.Column)}") || told.Contains(cell.At.ToString())) continue;
                // The days of a month, and the letters of the weekdays.
                if (form == SheetForm.DaysDownMonthsAcross && cell.Text.Length <= 2 || Months.Contains(cell.Text)) continue;
                var calendar = sheet.Cells.Where(other => down ? other.Column == cell.Column : other.Row == cell.Row).Count(other => Months.Contains(other.Text) || other.Value is CellValue.Day or CellValue.Number || other.Text.Contains("20", StringComparison.Ordinal));
                Assert.True(calendar > 3 || known.Contains(down ? cell.Column : cell.Row), $"{cell.At} \"{cell.Text}\" is neither read nor told.");
            }
        }
    }

    [Fact]
    public void Loads_of_weeks_are_those_expected()
    {
        foreach (var name in Samples.Select(row => row.Data).Where(name => name != "workbook-05-days-down"))
        {
            var (read, expected) = (Read($"samples/{name}.xlsx"), Expected($"samples/{name}.xlsx"));
            var load = Assert.Single(read.Rows, row => row.Role == RowRole.Load);
            var field = expected.GetProperty("weeks")[0].TryGetProperty("load_text", out _) ? "load_text" : name.Contains("03", StringComparison.Ordinal) ? "load_1_10" : name.Contains("04", StringComparison.Ordinal) ? "load_word" : "load";
            Same(expected.GetProperty("weeks").EnumerateArray().Where(week => $"{week.GetProperty(field)}".Length > 0).Select(week => $"{week.GetProperty("week")} {week.GetProperty(field)}"),
                load.Entries.Select(entry => $"{read.Grid!.Value.NumberOf(entry.Days.First)} {entry.Text}"));
        }
    }

    [Fact]
    public void An_answer_places_the_matches_without_a_day()
    {
        var read = SheetReader.Read(Workbook.Read("w", File.ReadAllBytes(PathOf("samples/workbook-01-weeks-across.xlsx"))), SheetMap.Empty.With("Q-day", "sunday"));
        var match = read.Rows.SelectMany(row => row.Matches).First(match => match.Text == "H Tarnholt");
        Assert.Equal((new DateOnly(2026, 9, 13), MatchStatus.Confirmed), (match.Day, match.Status));
        Assert.DoesNotContain(read.Questions, question => question.Kind == "Q-day");
    }

    private static readonly HashSet<string> Months = new("Jan Feb Mar Mär Apr May Mai Jun Jul Aug Sep Oct Okt Nov Dec Dez".Split(' '), StringComparer.Ordinal);

    private static readonly JsonSerializerOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // The expected result numbers two spans of one colour only for reading, see its Q-legend.
    private static string Named(JsonElement run) => run.GetProperty("name").GetString()! is var name && run.TryGetProperty("fill", out _) ? name.TrimEnd(' ', '1', '2') : name;

    private static void Same(IEnumerable<string> expected, IEnumerable<string> found) => Assert.Equal(string.Join('\n', expected), string.Join('\n', found));

    private static string Competition(string competition, string importance) => importance == "friendly" || competition.Equals("friendly", StringComparison.OrdinalIgnoreCase) ? "friendly" : competition;

    private static int WeekOf(JsonElement match, SheetReading read) => match.TryGetProperty("date", out var date) && DateOnly.TryParseExact(date.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? read.Grid!.Value.NumberOf(day) : match.GetProperty("week").GetInt32();

    private static string? KindOf(string file, string id) => Kinds.TryGetValue($"{Path.GetFileNameWithoutExtension(file)}/{id}", out var kind) ? kind : id;

    private static string Lower<T>(T value) => $"{value}".ToLowerInvariant();

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    internal static string PathOf(string file) => Path.Combine(Path.GetDirectoryName(EventCases.Folder)!, "workbooks", file);

    internal static SheetReading Read(string file) => SheetReader.Read(Workbook.Read(Path.GetFileName(file), File.ReadAllBytes(PathOf(file))), SheetMap.Empty);

    internal static JsonElement Expected(string file)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(PathOf($"samples/{Path.GetFileNameWithoutExtension(file)}.xlsx.expected.json")));
        return json.RootElement.Clone();
    }
}
