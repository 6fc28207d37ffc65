using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Tests.Demo;
using Seasonwright.Solver;
using Seasonwright.Solver.Tests;

namespace Seasonwright.Desk.Tests.Weeks;

/// <summary>Every week of the demo's year laid out one after the other, each with the weeks before it as they were proposed: by the rulebook and by the judge, which share no code with the engine.</summary>
public class DemoWeeksTests(ITestOutputHelper output)
{
    [Fact]
    public void Weeks_laid_out_in_turn_bring_nothing_above_a_caution()
    {
        var (season, setup) = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));
        List<string> brought = [];
        foreach (var week in season.Weeks)
        {
            var proposal = WeekProposals.Of(WeekProblem.Of(season, setup, week, week.Days.First));
            output.WriteLine($"week {week.Number}: {ShownWeek.Of(proposal)}");
            if (proposal.Problem.Stop is not null) continue;
            brought.AddRange(WeekJudge.Of(proposal.Problem, [.. proposal.Sessions.Where(session => session.Kind != SessionKind.Test)]).Select(broken => $"week {week.Number}: {broken}"));
            brought.AddRange(WeekRules.Brought(season, setup, proposal).Select(finding => $"week {week.Number}: {finding.Severity} {finding.Rule.Id} {finding.Sentence}"));
            season = WeekRules.Taken(season, setup, proposal);
        }
        Assert.True(brought.Count == 0, string.Join('\n', brought));
    }
}
