using System.Globalization;
using System.Text.Json;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Three real competitions, read for every team; see tests/Cases/fixtures/open-data.md.</summary>
public class FixtureOpenDataTests
{
    [Theory]
    [InlineData("2024-25_en.1.json", true)]
    [InlineData("2023-24_de.1.json", true)]
    [InlineData("2024-25_uefa.cl.json", false)]
    public void Every_match_of_every_team_is_read_once_on_its_day(string file, bool isLeague)
    {
        var truth = Truth(file);
        var teams = truth.SelectMany(match => new[] { match.Home, match.Away }).Distinct(StringComparer.Ordinal).ToList();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var team in teams)
        {
            var read = FixtureCases.Read(file, team);
            Assert.Empty(read.Problems);
            // Real names of one league are not taken for each other.
            Assert.Empty(read.Questions);
            var expected = truth.Where(match => match.Home == team || match.Away == team).Select(match => match.Home == team ? (match.Day, match.KickOff, Opponent: match.Away, Venue: (Venue?)Venue.Home) : (match.Day, match.KickOff, Opponent: match.Home, Venue: Venue.Away));
            Assert.Equal(expected, read.Rows.Select(row => (row.Day!.Value, row.KickOff!.Value, Opponent: row.Opponent!, row.Venue)));
            if (isLeague) Assert.Equal(read.Rows.Count(row => row.Venue == Venue.Home), read.Rows.Count(row => row.Venue == Venue.Away));
            Assert.Equal(read.Rows.Count, read.Rows.Select(row => row.NaturalKey).Distinct(StringComparer.Ordinal).Count());
            foreach (var row in read.Rows) seen[$"{row.Day:O} {(row.Venue == Venue.Home ? team : row.Opponent)}"] = seen.GetValueOrDefault($"{row.Day:O} {(row.Venue == Venue.Home ? team : row.Opponent)}") + 1;
        }
        // Each match is found by its two teams and by nobody else.
        Assert.Equal(truth.Count, seen.Count);
        Assert.All(seen.Values, count => Assert.Equal(2, count));
    }

    /// <summary>However a season is written down, the same days come out: also with the year left out, over New Year and both clock changes.</summary>
    [Theory]
    [InlineData("Date,Home,Away", ",", "yyyy-MM-dd", false)]
    [InlineData("Datum;Heim;Gast", ";", "d.M.yyyy", false)]
    [InlineData("Date\tHome team\tAway team", "\t", "M/d/yyyy", false)]
    [InlineData("Fecha|Local|Visitante", "|", "dd/MM/yy", false)]
    [InlineData("Dato;Hjemme;Ude", ";", "ddd d MMM", true)]
    [InlineData("When,Home,Away", ",", "ddd MMMM d", true)]
    [InlineData("Päivä;Koti;Vieras", ";", "d.M.yyyy", false)]
    [InlineData("Tarih\tEv sahibi\tDeplasman", "\t", "yyyy-MM-dd", false)]
    public void The_days_do_not_depend_on_how_they_are_written(string headings, string delimiter, string format, bool withoutYear)
    {
        foreach (var file in new[] { "2024-25_en.1.json", "2023-24_de.1.json" })
        {
            var truth = Truth(file);
            var lines = truth.Select(match => string.Join(delimiter, match.Day.ToString(format, CultureInfo.InvariantCulture), match.Home, match.Away));
            var read = FixtureReader.Read(SourceText.OfText("list", string.Join("\r\n", lines.Prepend(headings))), new FixtureOptions(truth[0].Home, Today: truth[0].Day));
            Assert.Equal(withoutYear, read.Questions.Any(question => question.Kind == "Q-year"));
            Assert.Equal(truth.Where(match => match.Home == truth[0].Home || match.Away == truth[0].Home).Select(match => match.Day), read.Rows.Select(row => row.Day!.Value));
        }
    }

    /// <summary>A day written once for all its matches is the day of each, and in every list it is offered for no team plays twice a day.</summary>
    [Theory]
    [InlineData("Date,Home,Away")]
    [InlineData("Päivä,Koti,Vieras")]
    public void A_day_written_once_is_the_day_of_all_its_matches(string headings)
    {
        foreach (var file in new[] { "2024-25_en.1.json", "2023-24_de.1.json" })
        {
            var truth = Truth(file);
            var lines = truth.Select((match, i) => string.Join(',', i > 0 && truth[i - 1].Day == match.Day ? "" : match.Day.ToString("O", CultureInfo.InvariantCulture), match.Home, match.Away));
            foreach (var team in truth.Select(match => match.Home).Distinct(StringComparer.Ordinal))
            {
                var read = FixtureReader.Read(SourceText.OfText("list", string.Join('\n', lines.Prepend(headings))), new FixtureOptions(team));
                Assert.Equal(truth.Where(match => match.Home == team || match.Away == team).Select(match => (match.Day, match.Home == team)), read.Rows.Select(row => (row.Day!.Value, row.Venue == Venue.Home)));
                Assert.All(read.Questions, question => Assert.True(question.Offered is "as-above" or "pair-2-3", question.Text));
            }
        }
    }

    private static List<(DateOnly Day, TimeOnly KickOff, string Home, string Away)> Truth(string file)
    {
        using var json = JsonDocument.Parse(FixtureCases.Source(file).Text);
        return [.. json.RootElement.GetProperty("matches").EnumerateArray().Select(match => (
            DateOnly.ParseExact(match.GetProperty("date").GetString()!, "O", CultureInfo.InvariantCulture), TimeOnly.ParseExact(match.GetProperty("time").GetString()!, "HH:mm", CultureInfo.InvariantCulture),
            match.GetProperty("team1").GetString()!, match.GetProperty("team2").GetString()!))];
    }
}
