using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Whole proposals, judged by the rulebook, which shares no code with the engine: no unforced finding above a caution, three cautions
/// at most. A small dose of what ./prove propose runs over hundreds of seasons: SEED begins elsewhere, COUNT takes more.
/// </summary>
public class ProposalTests(ITestOutputHelper output)
{
    private const int Drawn = 12, MostCautions = 3;

    [Theory]
    [MemberData(nameof(StructureTests.Leagues), MemberType = typeof(StructureTests))]
    public void Real_leagues_have_plans_that_the_rulebook_has_little_against(string list, string club, int weeks, string? cup, bool exams, StartLevel start) =>
        Judged(club, Seasons.Of(list, club, weeks, cup, exams), start);

    [Fact]
    public void Drawn_seasons_have_plans_that_the_rulebook_has_little_against()
    {
        var (first, count) = (Seasons.Given("SEED", 1000), Seasons.Given("COUNT", Drawn));
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + count; seed++) Judged($"seed {seed}", Seasons.Drawn(seed), (StartLevel)(seed % 3));
    }

    private void Judged(string name, Season season, StartLevel start)
    {
        var problem = Problem.Of(season, Seasons.Team, new Wishes { Start = start });
        var watch = Stopwatch.StartNew();
        var structure = Structures.LeastBroken(problem)!;
        var a = watch.ElapsedMilliseconds;
        var loads = LoadPlans.Best(problem, structure);
        var c = watch.ElapsedMilliseconds - a;
        var emphasis = EmphasisPlans.Best(problem, structure, loads);
        var b = watch.ElapsedMilliseconds - a - c;
        var team = Seasons.Coming(start);
        var proposal = Proposals.Of(season, team, new Wishes(), 1, (kind, key) => $"{kind}-{key}")[0];
        var planned = Plans.After(season, proposal.Edits);
        var findings = Rulebook.Check(planned, team).Findings.Where(finding => !finding.IsForced).ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: A {a} ms, C {c} ms gap {loads.Gap:P3} {loads.IsProven}, B {b} ms {emphasis.IsProven}; broken {structure.Broken.Count}, short {string.Join(' ', loads.Short.Select(one => $"{one.Condition.Name}@{one.Week + 1}:{one.Beyond / 10}"))} {string.Join(' ', emphasis.Short.Select(one => $"{one.Condition.Name}@{one.Week + 1}:{one.Beyond}"))}"));
        foreach (var finding in findings) output.WriteLine($"   {finding.Severity} {finding.Rule.Id} {finding.Place.Weeks}: {finding.Sentence}");
        // Practices that are entered are a fact and may alone go beyond a limit: the loads say so.
        if (problem.Weeks.Any(week => week.PracticePoints is not null)) return;
        if (findings.Count > 0) output.WriteLine(Shown.Of(problem, structure with { Weeks = structure.Weeks.Select(week => week with { Points = loads.Points[week.Index] }).ToValueList() }));
        Assert.DoesNotContain(findings, finding => finding.Severity > Severity.Caution);
        Assert.InRange(findings.Count, 0, MostCautions);
        Assert.True(loads.Gap < 0.01 && emphasis.IsProven, $"{name}: {loads.Gap}");
    }
}
