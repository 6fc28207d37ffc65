using Seasonwright.Core.Loads;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;

namespace Seasonwright.Desk.Tests.Demo;

/// <summary>
/// The demo against the rulebook: what its calendar brings about and nothing else. Three rules are written out a second time on
/// purpose: heavy-week-in-congestion (moderate), transition-length and test-timing (expert opinion).
/// </summary>
public class DemoLoadTests
{
    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));

    private static decimal Au(int week) => Demo.Season.TargetOf(Demo.Season.Weeks[week - 1].Id)!.Value.Au;

    private static WeekKind Kind(int week) => Demo.Season.KindOf(Demo.Season.Weeks[week - 1].Id)!.Value;

    private static decimal Training(int week) => Au(week) - WeekLoad.Of(Demo.Season, Demo.Setup, Demo.Season.Weeks[week - 1]).Match.Au;

    public static TheoryData<int> Weeks => new(Enumerable.Range(2, Demo.Season.Weeks.Length - 1));

    [Theory]
    [InlineData(2026, 8, 10)]
    [InlineData(2027, 7, 5)]
    [InlineData(2029, 1, 1)]
    public void Check_finds_what_the_calendar_brings_about_and_nothing_else(int year, int month, int day)
    {
        var (season, setup) = DemoSeasonTests.Played(DemoSeason.Make(new(year, month, day)));
        var checkup = Rulebook.Check(season, setup);
        Assert.NotEmpty(checkup.Findings);
        Assert.All(checkup.Findings, finding => Assert.True(finding is { IsForced: true, Severity: Severity.Caution }, finding.Sentence));
        // Found little because it was looked at, not because nothing could be told.
        Assert.InRange(checkup.Answers.Count(answer => answer.State == RuleState.Checked), 32, checkup.Answers.Count);
    }

    [Theory, MemberData(nameof(Weeks))]
    public void Two_matches_leave_less_than_three_fifths_of_the_training(int week)
    {
        if (Kind(week) != WeekKind.Congested) return;
        var one = Enumerable.Range(1, week - 1).Last(before => Demo.Season.MatchesIn(Demo.Season.Weeks[before - 1]).Count() == 1);
        Assert.True(Training(week) <= 0.6m * Training(one), $"week {week}: {Training(week)} after {Training(one)} in week {one}");
    }

    [Fact]
    public void Two_to_four_weeks_of_transition_follow_the_last_match()
    {
        var last = Demo.Season.Matches.Last(match => match.IsOfficial).Day!.Value;
        var days = Demo.Season.Phases.Where(run => run.Phase.Kind == PhaseKind.Transition && run.First.Days.First > last).Sum(run => run.Last.Days.Last.DayNumber - run.First.Days.First.DayNumber + 1);
        Assert.InRange(days, 14, 28);
    }

    [Fact]
    public void Tiring_tests_keep_72_hours_before_a_match_and_48_after_one() => Assert.All(
        Demo.Season.TestDays.Where(test => test.Battery.Contains("Strength", StringComparison.Ordinal)),
        test => Assert.DoesNotContain(Demo.Season.Matches.Where(match => match.IsOfficial), match =>
            match.Days!.Value.First.DayNumber - test.Day.DayNumber is > -2 and < 3 || match.Days.Value.Contains(test.Day)));
}
