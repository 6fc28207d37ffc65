using System.Text.Json;

namespace Seasonwright.Cli.Tests;

/// <summary>What scripts may rely on of <c>propose</c>.</summary>
public class ProposeTests
{
    [Fact]
    public void The_same_season_gives_the_same_bytes_and_the_answer_tells_each_stage_and_week()
    {
        using var folder = new Session();
        folder.Run("start --from 2027-07-05 --weeks 14 --team Vale --out ./season.json");
        folder.Run("apply ./season.json ./league-start.jsonl --out ./season.json");
        var first = folder.Run("propose ./season.json --out ./plan.json --alternatives 1 --format json");
        folder.Run("propose ./season.json --out ./again.json");
        Assert.Equal(File.ReadAllText(folder["plan.json"]), File.ReadAllText(folder["again.json"]));
        // The other plan is another one.
        Assert.NotEqual(File.ReadAllText(folder["plan.json"]), File.ReadAllText(folder["plan.2.json"]), StringComparer.Ordinal);

        using var answer = JsonDocument.Parse(first.Output);
        var root = answer.RootElement;
        Assert.Equal("proposed", root.GetProperty("status").GetString());
        Assert.InRange(root.GetProperty("gap").GetDouble(), 0, 0.01);
        Assert.True(root.GetProperty("score").GetDecimal() <= root.GetProperty("bound").GetDecimal() && root.GetProperty("seconds").GetDouble() > 0);
        Assert.Equal(["structure", "loads", "emphasis"], root.GetProperty("stages").EnumerateArray().Select(stage => stage.GetProperty("name").GetString()!), StringComparer.Ordinal);
        Assert.All(root.GetProperty("stages").EnumerateArray(), stage => Assert.True(stage.GetProperty("score").GetDecimal() <= stage.GetProperty("bound").GetDecimal() && stage.GetProperty("gap").GetDouble() >= 0));
        var weeks = root.GetProperty("weeks").EnumerateArray().ToList();
        Assert.Equal(Enumerable.Range(1, 14), weeks.Select(week => week.GetProperty("week").GetInt32()));
        Assert.All(weeks, week => Assert.NotEmpty(week.GetProperty("reasons").EnumerateArray()));
    }

    /// <summary>The demo's weeks that are over are locked and break rules: a fact that is planned around, no clash.</summary>
    [Fact]
    public void The_demo_is_planned_around_its_locked_weeks()
    {
        using var folder = new Session();
        folder.Run("demo --anchor 2027-07-05 --out ./demo.json");
        using var answer = JsonDocument.Parse(folder.Run("propose ./demo.json --out ./plan.json --format json").Output);
        Assert.Equal("proposed", answer.RootElement.GetProperty("status").GetString());
        var seventh = answer.RootElement.GetProperty("weeks")[6].GetProperty("reasons").EnumerateArray().Select(reason => reason.GetProperty("sentence").GetString());
        Assert.Contains(seventh, sentence => sentence!.StartsWith("What you locked alone", StringComparison.Ordinal));
    }

    /// <summary>Nothing happened, so nothing changes: not a byte, whenever it is asked.</summary>
    [Theory]
    [InlineData("2027-07-05")]
    [InlineData("2027-09-01")]
    [InlineData("2027-10-09")]
    public void A_plan_to_which_nothing_happened_comes_back_as_it_was(string day)
    {
        using var folder = new Session();
        folder.Run("start --from 2027-07-05 --weeks 14 --team Vale --out ./season.json");
        folder.Run("apply ./season.json ./league-start.jsonl --out ./season.json");
        folder.Run("propose ./season.json --out ./plan.json");
        folder.Run($"replan ./plan.json --as-of {day} --out ./same.json");
        Assert.Equal(File.ReadAllText(folder["plan.json"]), File.ReadAllText(folder["same.json"]));
    }
}
