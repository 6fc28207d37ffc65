using System.Text;
using System.Text.Json.Nodes;

namespace Seasonwright.Wire.Tests;

/// <summary>Room files: what is written is read again, and what is wrong is said with its place.</summary>
public class RoomFileTests
{
    private static readonly string Example = File.ReadAllText(Repository.File("tests", "Cases", "cli", "files", "room.json"));

    private static string? Said(string text) => RoomFile.Read(Encoding.UTF8.GetBytes(text), out var problem) is null ? problem!.ToString() : null;

    [Fact]
    public void The_page_shows_the_file_that_the_tests_read() =>
        Assert.Contains($"```json\n{Example}```", File.ReadAllText(Repository.File("docs", "room-file.md")), StringComparison.Ordinal);

    [Fact]
    public void What_is_written_is_read_again()
    {
        var week = RoomFile.Read(Encoding.UTF8.GetBytes(Example), out _)!;
        var text = RoomFile.Write(week);
        Assert.Equal(week, RoomFile.Read(Encoding.UTF8.GetBytes(text), out _));
        Assert.Equal(text, RoomFile.Write(RoomFile.Read(Encoding.UTF8.GetBytes(text), out _)!));
        Assert.Equal((3, 6, 1), (week.Teams.Count, week.Asks.Count(), week.Placed.Count()));
    }

    [Theory]
    [InlineData("room.places", "0", "In room.places: 1 to 500 are possible.")]
    [InlineData("room.places", "\"forty\"", "In room.places: A whole number is expected here.")]
    [InlineData("room.coaches", "51", "In room.coaches: 1 to 50 are possible.")]
    [InlineData("room.open.0.from", "\"16:15\"", "In room.open[0].from: The room is planned in half hours")]
    [InlineData("room.open.0.to", "\"16:00\"", "In room.open[0].to: It ends before it starts.")]
    [InlineData("room.open.0.day", "\"moonday\"", "'moonday' is not one of its words. They are: sunday, monday,")]
    [InlineData("room.racks", "6", "There is no field 'racks' here. Take it out, or check its spelling.")]
    [InlineData("room.name", "\" \"", "In room.name: A name has 1 to 80 letters on one line.")]
    [InlineData("first", "\"6.9.2027\"", "'6.9.2027' is no day of the calendar.")]
    [InlineData("first", "\"9999-12-31\"", "In first: Days from 1950-01-01 to 2149-12-31 are possible.")]
    [InlineData("teams", "[]", "In teams: 1 to 60 are possible.")]
    [InlineData("teams.1.id", "\"harbour-vale-women\"", "In teams[1].id: The id 'harbour-vale-women' stands twice.")]
    [InlineData("teams.1.sessions.0.id", "\"women-legs\"", "In teams[1].sessions[0].id: The id 'women-legs' stands twice.")]
    [InlineData("teams.0.sessions.0.minutes", "5", "In teams[0].sessions[0].minutes: 15 to 240 are possible.")]
    [InlineData("teams.0.sessions.0.athletes", "-1", "In teams[0].sessions[0].athletes: 1 to 500 are possible.")]
    [InlineData("teams.0.sessions.0.day", "\"2027-09-13\"", "In teams[0].sessions[0].day: The day lies outside 2027-09-06 to 2027-09-12.")]
    [InlineData("teams.0.sessions.0.start", "\"17:45\"", "In teams[0].sessions[0].start: The room is planned in half hours")]
    [InlineData("teams.0.practices.0.minutes", "400", "In teams[0].practices[0].minutes: It would go on past midnight.")]
    [InlineData("teams.0.matches.0", "\"2027-11-11\"", "In teams[0].matches[0]: The day lies outside 2027-08-30 to 2027-09-19.")]
    [InlineData("teams.1.sessions.0.windows.0.to", "\"16:00\"", "In teams[1].sessions[0].windows[0].to: It ends before it starts.")]
    [InlineData("teams.2.sessions.0.place.start", "\"23:30\"", "In teams[2].sessions[0].place.start: It would go on past midnight.")]
    [InlineData("format", "\"seasonwright-season\"", "This is no Seasonwright room file. A room file begins with \"format\": \"seasonwright-room\"")]
    [InlineData("version", "2", "The file has version 2; this program reads up to version 1.")]
    public void What_is_wrong_is_said_with_its_place(string place, string value, string said)
    {
        var whole = JsonNode.Parse(Example)!;
        var path = place.Split('.');
        var parent = path[..^1].Aggregate(whole, (node, step) => int.TryParse(step, System.Globalization.CultureInfo.InvariantCulture, out var index) ? node[index]! : node[step]!);
        if (int.TryParse(path[^1], System.Globalization.CultureInfo.InvariantCulture, out var last)) parent[last] = JsonNode.Parse(value);
        else parent[path[^1]] = JsonNode.Parse(value);
        Assert.Contains(said, Said(whole.ToJsonString())!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_was_cut_off_says_so() => Assert.Contains("The text ends before it is complete.", Said(Example[..400])!, StringComparison.Ordinal);
}
