using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Demo;

namespace Seasonwright.Desk.Tests.Demo;

/// <summary>
/// The demo's targets against the rulebook's defaults, written out here a second time on purpose. Sources as the rulebook
/// names them: weekly-ramp and trailing-four-spike (contested), unloading-size (expert opinion), taper-volume (strong),
/// heavy-week-in-congestion (moderate), transition-length (expert opinion). They judge a plan, never a person.
/// </summary>
public class DemoLoadTests
{
    private static readonly (Season Season, Setup Setup) Demo = DemoSeasonTests.Played(DemoSeason.Make(new(2027, 7, 5)));
    private static readonly WeekKind[] Light = [WeekKind.Unloading, WeekKind.Taper, WeekKind.Transition, WeekKind.Break];

    private static decimal Au(int week) => Demo.Season.TargetOf(Demo.Season.Weeks[week - 1].Id)!.Value.Au;

    private static WeekKind Kind(int week) => Demo.Season.KindOf(Demo.Season.Weeks[week - 1].Id)!.Value;

    private static decimal Training(int week) => Au(week) - WeekLoad.Of(Demo.Season, Demo.Setup, Demo.Season.Weeks[week - 1]).Match.Au;

    private static IEnumerable<int> NormalBefore(int week) => Enumerable.Range(1, week - 1).Reverse().Where(before => !Light.Contains(Kind(before)));

    public static TheoryData<int> Weeks => new(Enumerable.Range(2, Demo.Season.Weeks.Length - 1));

    [Theory, MemberData(nameof(Weeks))]
    public void No_week_rises_more_than_a_tenth_above_the_last_normal_one(int week) =>
        // Whole AU: a tenth of a per cent is rounding.
        Assert.True(Au(week) / Au(NormalBefore(week).First()) <= 1.101m, $"week {week}: {Au(week)} after {Au(NormalBefore(week).First())}");

    [Theory, MemberData(nameof(Weeks))]
    public void No_week_is_more_than_three_tenths_above_the_four_before(int week)
    {
        if (week < 5) return;
        var mean = Enumerable.Range(week - 4, 4).Average(Au);
        Assert.True(Au(week) / mean <= 1.3m, $"week {week}: {Au(week)} on {mean}");
    }

    [Theory, MemberData(nameof(Weeks))]
    public void Unloading_takes_a_fifth_to_three_fifths_off(int week)
    {
        if (Kind(week) != WeekKind.Unloading) return;
        var drop = 1 - (Au(week) / NormalBefore(week).Take(3).Average(Au));
        Assert.InRange(drop, 0.2m, 0.6m);
    }

    [Theory, MemberData(nameof(Weeks))]
    public void Two_matches_leave_less_than_three_fifths_of_the_training(int week)
    {
        if (Kind(week) != WeekKind.Congested) return;
        var one = Enumerable.Range(1, week - 1).Last(before => Demo.Season.MatchesIn(Demo.Season.Weeks[before - 1]).Count() == 1);
        Assert.True(Training(week) <= 0.6m * Training(one), $"week {week}: {Training(week)} after {Training(one)} in week {one}");
    }

    [Fact]
    public void The_taper_cuts_training_by_two_to_three_fifths_over_eight_to_fourteen_days()
    {
        var taper = Enumerable.Range(1, Demo.Season.Weeks.Length).First(week => Kind(week) == WeekKind.Taper);
        var reference = (Training(taper - 1) + Training(taper - 2)) / 2;
        Assert.InRange(1 - (Training(taper) / reference), 0.41m, 0.6m);
        var final = Demo.Season.Matches.First(match => match.Series is not null).Day!.Value;
        Assert.InRange(final.DayNumber - Demo.Season.Weeks[taper - 1].Days.First.DayNumber, 8, 14);
    }

    [Fact]
    public void No_more_than_three_building_weeks_in_preparation_and_eight_in_the_season_without_unloading()
    {
        var run = 0;
        foreach (var week in Enumerable.Range(1, Demo.Season.Weeks.Length))
        {
            run = Light.Contains(Kind(week)) ? 0 : run + 1;
            var phase = Demo.Season.PhaseOf(Demo.Season.Weeks[week - 1])!.Phase.Kind;
            Assert.True(run <= (phase == PhaseKind.Competition ? 8 : 3), $"week {week}: {run} in a row");
        }
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
