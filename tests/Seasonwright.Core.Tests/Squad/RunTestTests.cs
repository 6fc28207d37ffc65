using Seasonwright.Core.Squad;
using static Seasonwright.Core.Tests.Squad.GymDay;

namespace Seasonwright.Core.Tests.Squad;

public class RunTestTests
{
    private static RunTest Test(int days, int metres, int seconds, int recorded = 0) => new(new(days, 0, 0, new byte[8]), Strong.Id, Monday.AddDays(days), metres, seconds, DateTimeOffset.UnixEpoch.AddHours(recorded));

    [Fact]
    public void The_newest_holds_and_of_a_day_what_was_written_down_last()
    {
        RunTest[] tests = [Test(-7, 1_500, 400, 1), Test(-7, 1_500, 375, 2), Test(-90, 2_000, 480, 3), Test(3, 1_500, 300, 4)];
        Assert.Equal(4m, RunTest.On(Monday, tests)!.Speed);
        Assert.Equal([480, 375, 300], RunTest.Standing(tests).Select(test => test.Seconds));
        Assert.Null(RunTest.On(Monday.AddDays(-91), tests));
    }

    [Fact]
    public void A_speed_that_nobody_runs_is_none()
    {
        Assert.True(RunTest.IsSpeed(1_500, 300));
        foreach (var (metres, seconds) in new[] { (1_500, 0), (1_500, 25), (1_500, 1_001), (0, 300), (-1_500, 300) }) Assert.False(RunTest.IsSpeed(metres, seconds));
    }
}
