using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests;

/// <summary>Runs and weights as they are typed.</summary>
public class RunTextTests
{
    public static TheoryData<string, int, int, WorkUnit, int, int, int> Runs => new()
    {
        { "25min 70%", 1, 1_500, WorkUnit.Seconds, 70, 0, 0 },
        { "6x300m 95% rest 90s", 6, 300, WorkUnit.Metres, 95, 90, 0 },
        { "8 x 60 s @ 100 % rest 1min +10%", 8, 60, WorkUnit.Seconds, 100, 60, 10 },
        { "5km 65%", 1, 5_000, WorkUnit.Metres, 65, 0, 0 },
        { "4×1,5km 90% r 3min + 5% a week", 4, 1_500, WorkUnit.Metres, 90, 180, 5 },
    };

    [Theory]
    [MemberData(nameof(Runs))]
    public void A_run_is_read(string text, int repetitions, int amount, WorkUnit unit, int speed, int rest, int more) =>
        Assert.Equal(new HomeRun(repetitions, amount, unit, new Percent(speed), rest, more), RunText.Read(text));

    [Theory]
    [InlineData("")]
    [InlineData("run")]
    [InlineData("300m")]
    [InlineData("6x300 95%")]
    [InlineData("0m 80%")]
    [InlineData("0x300m 80%")]
    [InlineData("41x300m 80%")]
    [InlineData("300m 49%")]
    [InlineData("300m 121%")]
    [InlineData("6x300m 95% rest 901s")]
    [InlineData("6x300m 95% +21%")]
    [InlineData("200min 70%")]
    [InlineData("99999km 70%")]
    public void What_is_no_run_is_none(string text) => Assert.Null(RunText.Read(text));

    [Fact]
    public void What_is_written_is_read_as_the_same() => Gen.Select(Gen.Int[1, 40], Gen.Int[20, 7_200], Gen.Bool, Gen.Int[50, 120], Gen.Int[0, 900], Gen.Int[0, 20]).Sample((repetitions, amount, isMetres, speed, rest, more) =>
    {
        var run = new HomeRun(repetitions, amount, isMetres ? WorkUnit.Metres : WorkUnit.Seconds, new Percent(speed), rest, more);
        Assert.Equal(run, RunText.Read(RunText.Of(run)));
    });

    [Fact]
    public void Weights_are_read_in_steps_or_alone()
    {
        var locale = Setup.Empty(new("team")).Locale;
        foreach (var (text, steps) in new[] { ("2-20 by 2 kg", new WeightSteps(2, 20, 2, MassUnit.Kilogram)), ("5 to 30 by 2,5", new(5, 30, 2.5m, MassUnit.Kilogram)), ("16 kg", new(16, 16, 16, MassUnit.Kilogram)), ("35lb", new(35, 35, 35, MassUnit.Pound)) })
        {
            Assert.Equal(steps, StepsText.Read(text, MassUnit.Kilogram));
            Assert.Equal(steps, StepsText.Read(StepsText.Of(steps, locale), MassUnit.Kilogram));
        }
        foreach (var text in new[] { "", "heavy", "2-20", "2-20 by", "1234 kg" }) Assert.Null(StepsText.Read(text, MassUnit.Kilogram));
    }
}
