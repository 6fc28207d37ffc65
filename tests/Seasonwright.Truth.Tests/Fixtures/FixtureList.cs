using System.Globalization;
using System.Text.Json;

namespace Seasonwright.Truth.Tests.Fixtures;

/// <summary>A match as the open data says it.</summary>
internal sealed record Fixture(string Round, DateOnly Day, TimeOnly KickOff, string Home, string Away)
{
    public bool Has(string team) => Home == team || Away == team;
}

/// <summary>A real fixture list, see tests/Cases/fixtures/open-data.md.</summary>
internal sealed record FixtureList(string Name, string Zone, IReadOnlyList<Fixture> Matches)
{
    public IReadOnlyList<string> Teams => Matches.SelectMany(match => new[] { match.Home, match.Away }).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();

    public static FixtureList Read(string file, string zone)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Cases.PathOf($"fixtures/{file}.json")));
        string Text(JsonElement match, string name) => match.GetProperty(name).GetString()!;
        return new FixtureList(Text(document.RootElement, "name"), zone, document.RootElement.GetProperty("matches").EnumerateArray().Select(match => new Fixture(
            Text(match, "round"),
            DateOnly.ParseExact(Text(match, "date"), "O", CultureInfo.InvariantCulture),
            TimeOnly.ParseExact(Text(match, "time"), "HH:mm", CultureInfo.InvariantCulture),
            Text(match, "team1"),
            Text(match, "team2"))).ToList());
    }
}
