using Seasonwright.Core.Seasons;
using Seasonwright.Wire;

namespace Seasonwright.Solver.Tests;

/// <summary>The ten kinds of season and the clashes from their files: a plan that the rulebook has little against, or the clash by its name.</summary>
public class MadeSeasonTests(ITestOutputHelper output)
{
    public static TheoryData<string, string, string, string> Verdicts => [.. Truth.Tests.Cases.Rows("solver/verdicts.csv").Select(row => (row["season"], row["start"], row["wishes"], row["verdict"]))];

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void Every_season_has_its_verdict(string name, string start, string wishes, string verdict)
    {
        var (season, _) = SeasonFile.Read(File.ReadAllBytes(Truth.Tests.Cases.PathOf($"solver/seasons/{name}.json")), out _)!;
        var coming = Enum.Parse<StartLevel>(start, ignoreCase: true);
        var wished = new Wishes { Weeks = [.. wishes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Wish)] };
        if (verdict == "plan")
        {
            ProposalTests.Judged(output, $"{name} {wishes}".Trim(), season, coming, wished);
            return;
        }
        var clash = Clashes.Of(Problem.Of(season, Seasons.Coming(coming), wished));
        Assert.NotNull(clash);
        var named = clash.Colliding.Select(one => one.Week is { } at ? $"{one.Condition.Name}@{at + 1}" : one.Condition.Name).ToList();
        output.WriteLine($"{name} {wishes}: {string.Join(' ', named)}");
        Assert.All(verdict.Split(' '), one => Assert.Contains(one, named, StringComparer.Ordinal));
    }

    private static WeekWish Wish(string wish)
    {
        var (week, what) = (new WeekId($"w{wish.Split('=')[0]}"), wish.Split('=')[1]);
        return what switch
        {
            "B" => new(week, Kind: WeekKind.Building),
            "U" => new(week, Kind: WeekKind.Unloading),
            "GP" => new(week, Phase: PhaseKind.GeneralPreparation),
            _ => new(week, Load: new Points(Seasons.Team.ReferenceWeek).ToLoad(int.Parse(what, System.Globalization.CultureInfo.InvariantCulture))),
        };
    }
}
