using Seasonwright.Core.Rules;
using Seasonwright.Core.Rules.OfAthlete;
using Seasonwright.Core.Rules.OfDay;
using Seasonwright.Core.Rules.OfWeek;
using Seasonwright.Core.Seasons;
using static Seasonwright.Core.Seasons.Severity;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>
/// Rules that wait for what no plan holds, judged on plain figures. "Worked" cases are those of the reference the rulebook was written
/// from; the others stand at the limits of its conditions.
/// </summary>
public class JudgeTests
{
    private const double Gap = -1;

    private static Figures By(Rule rule, string figures = "") => new(rule.Id, Plans.Team(rule.Id, figures));

    [Theory]
    [InlineData(new double[] { 600, 0, 600, 0, 600, 0, 0 }, null)] // worked: 0.80
    [InlineData(new double[] { 400, 380, 420, 400, 390, 410, 0 }, Warning)] // worked: 2.26
    [InlineData(new double[] { 400, 380, 420, 400, 390, 410, 300 }, Warning)] // worked: 9.66
    [InlineData(new double[] { 300, 300, 300, 300, 300, 300, 300 }, Warning)] // worked: no deviation counts as above
    [InlineData(new double[] { 100, 100, 100, 100, 100, 0, 0 }, null)] // 1.46, closed form
    [InlineData(new double[] { 800, 400, 800, 800, 400, 800, 0 }, Caution)] // 1.82
    [InlineData(new double[] { 0, 0, 0, 0, 0, 0, 0 }, null)] // no load, no monotony
    public void Monotony(double[] days, Severity? says) => Assert.Equal(new Verdict(says), Judged(days));

    [Fact]
    public void Monotony_waits_for_five_days_and_takes_none_for_rest()
    {
        Assert.Equal(Verdict.TooLittle, Judged([400, 380, 420, 400, Gap, Gap, Gap]));
        Assert.Equal(new Verdict(Warning), Judged([400, 380, 420, 400, 300, Gap, Gap]));
    }

    /// <summary>By the population's deviation the same week is 8 % more: 1.46 becomes 1.58.</summary>
    [Fact]
    public void Monotony_by_the_deviation_the_team_chose() =>
        Assert.Equal(new Verdict(Caution), MonotonyAndStrain.Judge([100, 100, 100, 100, 100, 0, 0], [], By(MonotonyAndStrain.Rule, "sd=population")));

    /// <summary>1,800 AU by 0.80 are a strain of 1,443.</summary>
    [Theory]
    [InlineData(6, 1700, 950, Caution)]
    [InlineData(6, 1700, 970, null)]
    [InlineData(6, 1800, 950, null)]
    [InlineData(5, 1700, 950, null)]
    public void Strain_against_the_athletes_own_six_weeks(int weeks, double load, double strain, Severity? says) =>
        Assert.Equal(new Verdict(says), MonotonyAndStrain.Judge([600, 0, 600, 0, 600, 0, 0], [.. Enumerable.Repeat((load, strain), weeks)], By(MonotonyAndStrain.Rule)));

    [Theory]
    [InlineData("wwwwwww", Warning)] // worked, with the monotony of 9.66
    [InlineData("wwwwwwf", null)]
    [InlineData("fwwwwwwf", null)]
    [InlineData("fwwwwwwwf", Warning)]
    public void A_full_rest_day(string days, Severity? says) => Assert.Equal(new Verdict(says), FullRestDayMissing.Judge([.. days.Select(day => day == 'f')], By(FullRestDayMissing.Rule)));

    [Fact]
    public void Six_days_are_no_week_of_seven() => Assert.Equal(Verdict.TooLittle, FullRestDayMissing.Judge([.. Enumerable.Repeat(false, 6)], By(FullRestDayMissing.Rule)));

    /// <summary>Worked: a baseline of 20 km a week gives ceilings of 10, 14, 16 and 18.</summary>
    [Fact]
    public void Ceilings_of_a_return()
    {
        var figures = By(ReturnAfterBreakVolume.Rule);
        Assert.Equal([10, 14, 16, 18, null], Enumerable.Range(1, 5).Select(week => ReturnAfterBreakVolume.Ceiling(20, week, isFull: true, figures)));
        Assert.Equal([10, 14, null], Enumerable.Range(1, 3).Select(week => ReturnAfterBreakVolume.Ceiling(20, week, isFull: false, figures)));
    }

    [Theory]
    [InlineData(10, false, null)]
    [InlineData(10.1, false, Warning)]
    [InlineData(10.1, true, Stop)]
    public void A_week_back(double planned, bool isAfterHeatIllness, Severity? says) =>
        Assert.Equal(new Verdict(says), ReturnAfterBreakVolume.Judge((decimal)planned, 20, 1, isFull: true, isAfterHeatIllness, By(ReturnAfterBreakVolume.Rule)));

    [Fact]
    public void Without_a_baseline_no_ceiling() => Assert.Equal(Verdict.TooLittle, ReturnAfterBreakVolume.Judge(5, null, 1, isFull: true, isAfterHeatIllness: false, By(ReturnAfterBreakVolume.Rule)));

    [Theory]
    [InlineData(3, 10, 0.5, 15, null)] // worked
    [InlineData(5, 5, 0.8, 20, null)] // worked
    [InlineData(5, 10, 0.75, 37.5, Warning)] // worked
    [InlineData(4, 10, 0.75, 30, null)]
    [InlineData(4, 10, 0.76, 30.4, Warning)]
    public void The_lifting_index(int sets, int reps, double share, double index, Severity? says)
    {
        Assert.Equal((decimal)index, ReturnAfterBreakStrength.Index(sets, reps, (decimal)share));
        Assert.Equal(says, ReturnAfterBreakStrength.Judge(sets, reps, (decimal)share, By(ReturnAfterBreakStrength.Rule)));
    }

    [Theory]
    [InlineData(10, 6, 30, 5, null)] // worked: ends 10:00, match 20:00
    [InlineData(5, 6, 30, 5, Caution)] // worked: match 15:00
    [InlineData(6, 6, 30, 5, null)]
    [InlineData(33, 6, 30, 5, null)]
    [InlineData(34, 6, 30, 5, Caution)]
    [InlineData(10, 7, 30, 5, Caution)]
    [InlineData(10, 6, 31, 5, Caution)]
    [InlineData(10, 6, 30, 6, Caution)]
    public void Priming(int hours, int sets, int minutes, int rpe, Severity? says) => Assert.Equal(says, PrimingWindow.Judge(hours, sets, minutes, rpe, By(PrimingWindow.Rule)));

    [Theory]
    [InlineData(30.5, Warning, Stop)] // worked
    [InlineData(23.9, null, null)]
    [InlineData(24.0, null, Caution)]
    [InlineData(27.8, null, Caution)]
    [InlineData(27.9, Caution, Warning)]
    [InlineData(30.0, Caution, Warning)]
    [InlineData(30.1, Warning, Stop)]
    [InlineData(32.2, Warning, Stop)]
    [InlineData(32.3, Stop, Stop)]
    public void Heat(double celsius, Severity? acclimatised, Severity? others)
    {
        Assert.Equal(acclimatised, WbgtLimit.Judge((decimal)celsius, isAcclimatised: true, By(WbgtLimit.Rule)));
        Assert.Equal(others, WbgtLimit.Judge((decimal)celsius, isAcclimatised: false, By(WbgtLimit.Rule)));
        // A cooler region moves the bands down.
        Assert.Equal(others, WbgtLimit.Judge((decimal)celsius - 2, isAcclimatised: false, By(WbgtLimit.Rule, "regional_shift_c=-2")));
    }

    [Theory]
    [InlineData(13, 14, Warning)] // worked
    [InlineData(17, 16.5, Caution)] // worked
    [InlineData(13, 13, null)]
    [InlineData(17, 16, null)]
    [InlineData(17, 17, Caution)]
    [InlineData(17, 17.5, Warning)]
    [InlineData(18, 30, null)]
    public void Hours_of_the_young(int age, double hours, Severity? says) => Assert.Equal(says, YouthWeeklyHours.Judge(age, (decimal)hours, By(YouthWeeklyHours.Rule)));

    [Theory]
    [InlineData(20, null, 0.75, Caution)] // worked
    [InlineData(60, null, 0.75, null)]
    [InlineData(59, null, 0.75, Caution)]
    [InlineData(20, 48, 0.75, null)]
    [InlineData(20, 49, 0.75, Caution)]
    [InlineData(20, null, 0.80, null)]
    public void Top_up(int played, int? hours, double share, Severity? says) => Assert.Equal(says, MinutesTopUp.Judge(played, hours, (decimal)share, By(MinutesTopUp.Rule)));

    [Theory]
    [InlineData(new[] { 3.4 }, Caution)] // worked: z = -1.2
    [InlineData(new[] { 2.9 }, Warning)] // worked: z = -2.2
    [InlineData(new[] { 3.6 }, null)]
    [InlineData(new[] { 3.5 }, Caution)]
    [InlineData(new[] { 3.0 }, Warning)]
    [InlineData(new[] { 3.5, 3.4, 3.5 }, Warning)]
    [InlineData(new[] { 3.6, 3.4, 3.5 }, Caution)]
    [InlineData(new[] { 2.0, 2.0, 4.0 }, null)]
    public void Wellness_of_an_athlete_with_a_mean_of_4_and_a_deviation_of_a_half(double[] days, Severity? says) =>
        Assert.Equal(new Verdict(says), WellnessDrop.Judge(4, 0.5m, 14, [.. days.Select(day => (decimal)day)], By(WellnessDrop.Rule)));

    [Theory]
    [InlineData(0.5, 9)] // worked
    [InlineData(0.5, 13)]
    [InlineData(0.29, 14)]
    public void Wellness_waits_for_entries_that_differ(double deviation, int entries) =>
        Assert.Equal(Verdict.TooLittle, WellnessDrop.Judge(4, (decimal)deviation, entries, [2], By(WellnessDrop.Rule)));

    [Theory]
    [InlineData(1.2, 1.0, 5, TestChangeWithinNoise.Change.NotClear)] // worked
    [InlineData(2.0, 1.0, 5, TestChangeWithinNoise.Change.Clear)] // worked
    [InlineData(1.5, 1.0, 5, TestChangeWithinNoise.Change.NotClear)]
    [InlineData(1.51, 1.0, 5, TestChangeWithinNoise.Change.Clear)]
    [InlineData(-2.0, 1.0, 5, TestChangeWithinNoise.Change.Clear)]
    [InlineData(1.6, 1.0, 9, TestChangeWithinNoise.Change.NotClear)]
    [InlineData(1.8, 1.0, 9, TestChangeWithinNoise.Change.Clear)]
    [InlineData(9.0, null, 5, TestChangeWithinNoise.Change.NoVerdict)]
    internal void A_test_result(double change, double? error, double deviation, TestChangeWithinNoise.Change says) =>
        Assert.Equal(says, TestChangeWithinNoise.Judge((decimal)change, (decimal?)error, (decimal)deviation, By(TestChangeWithinNoise.Rule)));

    [Theory]
    [InlineData(21, 4, Warning)] // worked
    [InlineData(21, 6, null)] // worked
    [InlineData(21, 5, Warning)]
    [InlineData(8, 0, Warning)]
    [InlineData(7, 0, null)]
    public void The_first_match_back(int daysAway, int fullSessions, Severity? says) => Assert.Equal(says, SessionsBeforeFirstMatch.Judge(daysAway, fullSessions, By(SessionsBeforeFirstMatch.Rule)));

    [Fact]
    public void Concussion()
    {
        Assert.Equal(Stop, Entered(new(3, 2, 20))); // worked
        Assert.Null(Entered(new(3, 2, 24)));
        Assert.Equal(Stop, Entered(new(4, 3, 24)));
        Assert.Null(Entered(new(4, 3, 24, IsCleared: true)));
        Assert.Equal(Stop, Entered(new(2, 1, 48, HoldsContact: true)));
        Assert.Equal(Stop, Entered(new(3, 3, 48, IsWorse: true)));
        Assert.Null(Entered(new(2, 3, 1, IsWorse: true)));
        Assert.Equal(Stop, Entered(new(3, 2, 24, HoldsResistance: true)));
        Assert.Null(Entered(new(4, 3, 24, IsCleared: true, HoldsResistance: true)));

        static Severity? Entered(ConcussionClearance.Entry entry) => ConcussionClearance.Judge(entry, By(ConcussionClearance.Rule));
    }

    private static Verdict Judged(double[] days) => MonotonyAndStrain.Judge([.. days.Select(day => day == Gap ? (double?)null : day)], [], By(MonotonyAndStrain.Rule));
}
