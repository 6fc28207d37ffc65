using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
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
        if (verdict == "plan")
        {
            Planned(output, name, start, wishes);
            return;
        }
        var clash = Clashes.Of(Problem.Of(Read(name), Seasons.Coming(Coming(start)), Wished(wishes)));
        Assert.NotNull(clash);
        var named = clash.Colliding.Select(one => one.Week is { } at ? $"{one.Condition.Name}@{at + 1}" : one.Condition.Name).ToList();
        output.WriteLine($"{name} {wishes}: {string.Join(' ', named)}");
        Assert.All(verdict.Split(' '), one => Assert.Contains(one, named, StringComparer.Ordinal));
    }

    /// <summary>The plans of the made seasons that have one.</summary>
    internal static IEnumerable<(string Name, Season Season, Setup Team)> Planned(ITestOutputHelper output) => Verdicts.Select(row => row.Data).Where(row => row.Item4 == "plan")
        .Select(row => ($"{row.Item1} {row.Item3}".Trim(), Planned(output, row.Item1, row.Item2, row.Item3), Seasons.Coming(Coming(row.Item2))));

    private static Season Planned(ITestOutputHelper output, string name, string start, string wishes) => ProposalTests.JudgedOnce(output, $"{name} {wishes}".Trim(), Read(name), Coming(start), Wished(wishes));

    private static Season Read(string name) => SeasonFile.Read(File.ReadAllBytes(Truth.Tests.Cases.PathOf($"solver/seasons/{name}.json")), out _)!.Season;

    private static StartLevel Coming(string start) => Enum.Parse<StartLevel>(start, ignoreCase: true);

    private static Wishes Wished(string wishes) => new() { Weeks = [.. wishes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Wish)] };

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
