using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Wire;

namespace Seasonwright.Solver.Tests;

/// <summary>The ten kinds of season and the clashes from their files: a plan that the rulebook has little against, or the clash by its name.</summary>
public class MadeSeasonTests(ITestOutputHelper output)
{
    public static TheoryData<string, string, string, string, string> Verdicts => [.. Truth.Tests.Cases.Rows("solver/verdicts.csv").Select(row => (row["season"], row["start"], row["wishes"], row["verdict"], row["stricter"]))];

    [Theory]
    [MemberData(nameof(Verdicts))]
    public void Every_season_has_its_verdict(string name, string start, string wishes, string verdict, string stricter)
    {
        var (season, _) = SeasonFile.Read(File.ReadAllBytes(Truth.Tests.Cases.PathOf($"solver/seasons/{name}.json")), out _)!;
        var coming = Enum.Parse<StartLevel>(start, ignoreCase: true);
        var wished = new Wishes { Weeks = [.. wishes.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Wish)] };
        if (verdict == "plan")
        {
            var planned = ProposalTests.Judged(output, $"{name} {wishes}".Trim(), season, coming, wished);
            var found = Stricter.Select(one => Rulebook.Check(planned, Seasons.With(Seasons.Coming(coming), one.Figures)).Findings.Count(finding => !finding.IsForced && one.Rules.Contains(finding.Rule.Id, StringComparer.Ordinal))).ToList();
            output.WriteLine($"{name} stricter: {string.Join(' ', found)}");
            Assert.All(found.Zip(stricter.Split(' ')), pair => Assert.InRange(pair.First, Math.Floor(0.8 * Whole(pair.Second)), Math.Ceiling(1.2 * Whole(pair.Second))));
            return;
        }
        var clash = Clashes.Of(Problem.Of(season, Seasons.Coming(coming), wished));
        Assert.NotNull(clash);
        var named = clash.Colliding.Select(one => one.Week is { } at ? $"{one.Condition.Name}@{at + 1}" : one.Condition.Name).ToList();
        output.WriteLine($"{name} {wishes}: {string.Join(' ', named)}");
        Assert.All(verdict.Split(' '), one => Assert.Contains(one, named, StringComparer.Ordinal));
    }

    private static int Whole(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>
    /// Stricter readings of the rules than the engine plans for: a rise of 10 % only; comparisons that no absence restarts; cuts of 20 to
    /// 40 % in every unloading week. What they find in the plans is recorded beside each (counted on 27 Nov 2026): a checker that went
    /// soft would find less. Within a fifth, in whole findings.
    /// </summary>
    private static readonly (string[] Rules, (string Rule, string Figure, string Value)[] Figures)[] Stricter =
    [
        (["weekly-ramp"], [("weekly-ramp", "caution_up", "0.1")]),
        (["trailing-four-spike", "base-load-low"], [("return-after-break-volume", "min_absence_days", "1000")]),
        (["unloading-size"], [("unloading-size", "min_drop", "0.2"), ("unloading-size", "max_drop", "0.4"), ("unloading-size", "competition_min_drop", "0.2"), ("unloading-size", "competition_max_drop", "0.4")]),
    ];

    private static WeekWish Wish(string wish)
    {
        var (week, what) = (new WeekId($"w{wish.Split('=')[0]}"), wish.Split('=')[1]);
        return what switch
        {
            "B" => new(week, Kind: WeekKind.Building),
            "U" => new(week, Kind: WeekKind.Unloading),
            "GP" => new(week, Phase: PhaseKind.GeneralPreparation),
            _ => new(week, Load: new Points(Seasons.Team.ReferenceWeek).ToLoad(Whole(what))),
        };
    }
}
