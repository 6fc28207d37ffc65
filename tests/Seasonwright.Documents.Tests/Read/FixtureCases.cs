using System.Globalization;
using System.Text.Json;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>The lists of tests/Cases/fixtures and their expected results.</summary>
internal static class FixtureCases
{
    public const string Heading = "line,date,date_to,kickoff,opponent,venue,competition,round,status,result,place,ask";

    public static string Folder { get; } = Path.Combine(Above(AppContext.BaseDirectory), "tests", "Cases", "fixtures");

    public static SourceText Source(string path) => SourceText.OfBytes(Path.GetFileName(path), File.ReadAllBytes(Path.Combine(Folder, path)));

    public static FixtureList Read(string path, string? team = null, Answers? answers = null) => FixtureReader.Read(Source(path), new FixtureOptions(team, answers));

    public static JsonElement Expected(string path)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, path + ".expected.json")));
        return json.RootElement.Clone();
    }

    public static List<string> ExpectedRows(string path) => [.. CellTable.Read(SourceText.OfText("expected", File.ReadAllText(Path.Combine(Folder, path + ".expected.csv")))).Rows.Where(row => !row.IsBlank).Select(row => string.Join('|', row.Cells))];

    /// <summary>A row in the columns of the expected results.</summary>
    public static string Text(FixtureRow row) => string.Join('|', Line(row.Line), Day(row.Day), Day(row.LastDay), row.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "",
        row.Opponent ?? "", Lower(row.Venue), row.Competition ?? "", row.Round ?? "", Lower(row.Status), row.Result ?? "", row.Place ?? "", string.Join(' ', row.Ask));

    /// <summary>Lines on which the entries of a calendar begin.</summary>
    public static IEnumerable<int> EntryLines(SourceText source) =>
        source.Lines.Select((line, at) => (line, at)).Where(line => line.line.Trim().Equals("BEGIN:VEVENT", StringComparison.OrdinalIgnoreCase)).Select(line => line.at + 1);

    private static string Lower<T>(T value) => value?.ToString()?.ToLowerInvariant() ?? "";

    private static string Line(int line) => line.ToString(CultureInfo.InvariantCulture);

    private static string Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string Above(string folder)
    {
        while (!File.Exists(Path.Combine(folder, "Seasonwright.slnx"))) folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("No Seasonwright.slnx above the tests.");
        return folder;
    }
}
