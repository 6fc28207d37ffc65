using Seasonwright.Core.Edits;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Source: the rulebook, which shares no code with the engine. The rules that judge phases and kinds have nothing against structures; those that judge loads see the plan after its loads are set.</summary>
public class RulebookTests(ITestOutputHelper output)
{
    private static readonly string[] OfStructure = ["building-run-too-long", "peaks-too-many", "general-before-specific", "taper-length"];

    [Theory]
    [MemberData(nameof(StructureTests.Leagues), MemberType = typeof(StructureTests))]
    public void Phases_and_kinds_of_real_leagues_keep_the_rules(string list, string club, int weeks, string? cup, bool exams, StartLevel start)
    {
        var team = Seasons.Team.With(Assert.IsType<Accepted>(Decider.Decide(Seasons.Team, new SetRuleParameter(new("return-after-break-volume", "season_start"), start.ToString().ToLowerInvariant()))).Step);
        Judge(Seasons.Of(list, club, weeks, cup, exams), team);
    }

    [Fact]
    public void Those_of_drawn_seasons_do()
    {
        for (var seed = 1; seed <= 60; seed++) Judge(Seasons.Drawn(seed), Seasons.Team);
    }

    private void Judge(Season season, Setup team)
    {
        var problem = Problem.Of(season, team, new Wishes());
        var structure = Structures.Best(problem)!;
        var findings = Rulebook.Check(Planned(season, problem, structure), team).Findings.Where(finding => !finding.IsForced && OfStructure.Contains(finding.Rule.Id, StringComparer.Ordinal))
            // How long a taper is told to be follows from loads too.
            .Where(finding => finding.Rule.Id != "taper-length" || finding.Code == "missing").Where(finding => !IsInFirstWeeks(finding)).ToList();
        if (findings.Count == 0) return;
        output.WriteLine(Shown.Of(problem, structure));
        Assert.Fail(string.Join(Environment.NewLine, findings.Select(finding => $"{finding.Rule.Id} {finding.Code} {finding.Place.First}-{finding.Place.Last}: {finding.Sentence}")));
    }

    /// <summary>The rulebook asks for a taper before a key match of the season's first weeks too, where nothing was trained that could be cut.</summary>
    private static bool IsInFirstWeeks(Finding finding) => finding is { Rule.Id: "taper-length", Code: "missing", Place.Last: <= 3 };

    private static Season Planned(Season season, Problem problem, Structure structure)
    {
        List<SeasonEdit> edits = [];
        foreach (var week in structure.Weeks)
        {
            var id = problem.Weeks[week.Index].Id;
            edits.Add(new PaintPhase(id, id, new($"p{structure.Weeks.Take(week.Index + 1).Zip(structure.Weeks.Skip(1)).Count(pair => pair.First.Phase != pair.Second.Phase && pair.Second.Index <= week.Index)}"), week.Phase, new($"r{week.Index}")));
            edits.Add(new SetWeekKind(id, id, week.Kind));
            edits.Add(new SetWeekLoad(id, id, problem.Points.ToLoad(week.Points)));
        }
        return Plans.After(season, edits);
    }
}
