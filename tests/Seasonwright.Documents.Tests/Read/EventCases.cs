using System.Globalization;
using System.Text.Json;
using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>The lists of tests/Cases/events and their expected results.</summary>
internal static class EventCases
{
    public const string Heading = "line,kind,title,from,to,part,for,training,place,ask";

    public static string Folder { get; } = Path.Combine(Above(AppContext.BaseDirectory), "tests", "Cases", "events");

    public static string PathOf(string name) => Path.Combine(Folder, name);

    public static SourceText Source(string name) => SourceText.OfBytes(Path.GetFileName(name), File.ReadAllBytes(PathOf(name)));

    public static JsonElement Expected(string name)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(PathOf(name + ".expected.json")));
        return json.RootElement.Clone();
    }

    public static List<ValueList<string>> ExpectedRows(string name) => [.. CellTable.Read(SourceText.OfText("expected", File.ReadAllText(PathOf(name + ".expected.csv")))).Rows.Where(row => !row.IsBlank).Select(row => row.Cells)];

    /// <summary>The rows in the columns of the expected results, without the questions; events and test days in the order of their lines.</summary>
    public static List<(string Text, IEnumerable<Question> Asks)> Rows(EventList list) =>
    [
        .. list.Rows.Select(row => (row.Line, Text: Text(row.Line, Word(row), row.Title, row.From, row.To, row.PartInWords, row.For, row.Training is { } share ? Number(share.Value) : "", row.Place), Asks: list.QuestionsOf(row)))
            .Concat(list.TestDays.Select(row => (row.Line, Text: Text(row.Line, "test day", row.Battery, row.From, row.To, row.PartInWords, row.For, "", null), Asks: list.QuestionsOf(row))))
            .OrderBy(row => row.Line).Select(row => (row.Text, row.Asks)),
    ];

    private static string Text(int line, string kind, string title, DateOnly? from, DateOnly? to, string? part, string? whom, string training, string? place) =>
        string.Join('|', Number(line), kind, title, Day(from), Day(to), part ?? "", whom ?? "", training, place ?? "");

    private static string Word(EventRow row) => string.Concat(row.Kind.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $" {c}" : $"{c}")).ToLowerInvariant().Replace("national team", "national-team", StringComparison.Ordinal);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string Above(string folder) =>
        File.Exists(Path.Combine(folder, "Seasonwright.slnx")) ? folder : Above(Path.GetDirectoryName(folder.TrimEnd('/')) ?? throw new InvalidOperationException("The solution is not above the tests."));
}
