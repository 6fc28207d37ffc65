using System.Text.Json;

namespace Seasonwright.Cli.Tests;

/// <summary>What scripts may rely on of <c>week propose</c>.</summary>
public class WeekTests
{
    [Fact]
    public void The_same_week_gives_the_same_bytes_and_the_answer_tells_each_session()
    {
        using var folder = new Session();
        folder.Run("demo --anchor 2027-07-05 --out ./demo.json");
        var first = folder.Run("week propose ./demo.json --week 20 --out ./week.json --format json");
        Assert.Equal(0, first.Exit);
        folder.Run("week propose ./demo.json --week 20 --out ./again.json");
        Assert.Equal(File.ReadAllText(folder["week.json"]), File.ReadAllText(folder["again.json"]));
        // Laid out already, it stays as it is.
        folder.Run("week propose ./week.json --week 20 --out ./again.json");
        Assert.Equal(File.ReadAllText(folder["week.json"]), File.ReadAllText(folder["again.json"]));

        using var answer = JsonDocument.Parse(first.Output);
        var (root, proposal) = (answer.RootElement, answer.RootElement.GetProperty("proposal"));
        Assert.Equal(20, root.GetProperty("week").GetInt32());
        Assert.True(proposal.GetProperty("bound").GetDecimal() <= proposal.GetProperty("cost").GetDecimal() && proposal.GetProperty("seconds").GetDouble() > 0);
        var sessions = proposal.GetProperty("sessions").EnumerateArray().ToList();
        Assert.NotEmpty(sessions);
        Assert.All(sessions, session => Assert.NotEmpty(session.GetProperty("reasons").EnumerateArray()));
        var days = root.GetProperty("days").EnumerateArray().ToList();
        Assert.Equal(sessions.Select(session => $"{session.GetProperty("date")} {session.GetProperty("kind")}").Order(StringComparer.Ordinal),
            days.SelectMany(day => day.GetProperty("sessions").EnumerateArray().Where(session => session.GetProperty("is_ours").GetBoolean()).Select(session => $"{day.GetProperty("date")} {session.GetProperty("kind")}")).Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(root.GetProperty("ours").GetInt32(), days.Sum(day => day.GetProperty("ours_load").GetInt32()));
        Assert.Equal(root.GetProperty("laid_out").GetInt32(), days.Sum(day => Au(day, "match_load") + Au(day, "practice_load") + Au(day, "ours_load")));
    }

    /// <summary>Null where it is not known on which days the practices are.</summary>
    private static int Au(JsonElement day, string owner) => day.GetProperty(owner) is { ValueKind: JsonValueKind.Number } number ? number.GetInt32() : 0;
}
