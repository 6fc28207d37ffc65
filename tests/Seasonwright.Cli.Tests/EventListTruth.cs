using System.Text.Json;
using Seasonwright.Documents.Read;

namespace Seasonwright.Cli.Tests;

/// <summary>What a careful human reads in the sample lists (tests/Cases/events/ORIGIN.md; no source: common practice) is what <c>events</c> gives to a script.</summary>
public class EventListTruth
{
    private static readonly string[] Columns = ["line", "kind", "title", "from", "to", "part", "for", "training", "place"];

    [Theory]
    [InlineData("events-10-breaks.csv")]
    [InlineData("events-11-travel-legs.csv")]
    [InlineData("events-12-notice.txt")]
    public void The_rows_are_those_a_human_reads(string name)
    {
        using var session = new Session();
        var answer = session.Run($"events events/{name} --format csv");
        Assert.Equal(0, answer.Exit);
        Assert.Equal(Rows(File.ReadAllText(PathOf($"{name}.expected.csv"))), Rows(answer.Output));
    }

    [Fact]
    public void The_legs_of_a_journey_are_those_a_human_reads()
    {
        using var session = new Session();
        using var given = JsonDocument.Parse(session.Run("events events/events-11-travel-legs.csv --format json").Output);
        using var expected = JsonDocument.Parse(File.ReadAllText(PathOf("events-11-travel-legs.csv.expected.json")));
        var legs = given.RootElement.GetProperty("rows")[0].GetProperty("legs");
        Assert.Equal(Legs(expected.RootElement.GetProperty("legs"), "date", "dep", "arr", "arr_date", "zone_shift_h"), Legs(legs, "day", "departs", "arrives", "arrival_day", "zone_shift"));
        Assert.Equal(("Harbour Vale", "Skagrund airport"), (legs[0].GetProperty("from").GetString(), legs[4].GetProperty("to").GetString()));
    }

    public static TheoryData<string> Lists =>
        [.. Directory.GetFiles(PathOf("own")).Where(file => Path.GetExtension(file) != ".expected").Select(file => $"own/{Path.GetFileName(file)}").Order(StringComparer.Ordinal)];

    /// <summary>A season that has just taken a list in hears nothing new from it; what waited waits. A list that says no order of day and month is refused before the answer.</summary>
    [Theory]
    [MemberData(nameof(Lists))]
    public void A_list_taken_in_changes_nothing_a_second_time(string name)
    {
        using var session = new Session();
        var start = $"start --from 2026-07-06 --weeks 52 --team Vale --events events/{name} --out ./season.json";
        // What waits only for a year ("season none") has it from the season here.
        var isRefused = File.ReadLines(PathOf($"{name}.expected")).First() == "blocked";
        var started = session.Run(start);
        Assert.Equal(isRefused ? 1 : 0, started.Exit);
        var answers = "";
        if (isRefused)
        {
            Assert.Contains("Q-order", started.Error, StringComparison.Ordinal);
            session.Write("order.json", """{"Q-order":"day-first"}""", append: false);
            answers = " --answers ./order.json";
            Assert.Equal(0, session.Run(start + answers).Exit);
        }
        using var compared = JsonDocument.Parse(session.Run($"events events/{name} --update ./season.json --format json{answers}").Output);
        Assert.NotEqual(0, compared.RootElement.GetProperty("changes").GetArrayLength());
        var waiting = compared.RootElement.GetProperty("rows").EnumerateArray().Concat(compared.RootElement.GetProperty("test_days").EnumerateArray())
            .Where(row => row.GetProperty("state").GetString() == "waiting").Select(row => row.GetProperty("line").GetInt32()).ToHashSet();
        Assert.All(compared.RootElement.GetProperty("changes").EnumerateArray(), change =>
            Assert.Equal(waiting.Contains(change.GetProperty("line").GetInt32()) ? "asked" : "unchanged", change.GetProperty("change").GetString()));
    }

    private static string PathOf(string name) => Path.Combine(Cases.Data, "events", name);

    private static string Legs(JsonElement legs, params string[] fields) =>
        string.Join('\n', legs.EnumerateArray().Select(leg => string.Join('|', fields.Select(field => leg.TryGetProperty(field, out var value) ? $"{value}" : ""))));

    /// <summary>The columns that both have, by their headings.</summary>
    private static string Rows(string csv)
    {
        var rows = CellTable.Read(SourceText.OfText("rows", csv)).Rows.Where(row => !row.IsBlank).ToList();
        var places = Columns.Select(column => rows[0].Cells.ToList().IndexOf(column)).ToList();
        Assert.DoesNotContain(-1, places);
        return string.Join('\n', rows.Skip(1).Select(row => string.Join('|', places.Select(place => row[place]))));
    }
}
