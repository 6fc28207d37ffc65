using CsCheck;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Quantities;

public class QuantityTests
{
    [Theory]
    [InlineData(-1)]
    [InlineData(30_001)]
    [InlineData(int.MaxValue)]
    public void A_load_lies_between_0_and_30000(int au) => Assert.Throws<ArgumentOutOfRangeException>(() => new Load(au));

    [Theory]
    [InlineData(-1)]
    [InlineData(1441)]
    public void Minutes_fit_into_a_day(int minutes) => Assert.Throws<ArgumentOutOfRangeException>(() => new Minutes(minutes));

    [Theory]
    [InlineData(-1)]
    [InlineData(301)]
    public void Per_cent_end_at_300(int value) => Assert.Throws<ArgumentOutOfRangeException>(() => new Percent(value));

    [Theory]
    [InlineData(-0.5)]
    [InlineData(10.5)]
    [InlineData(5.25)]
    public void Rpe_is_given_in_halves_from_0_to_10(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => new Rpe((decimal)value));

    [Fact]
    public void Rpe_has_one_form() => Assert.Equal(("RPE 5.5", new Rpe(5.5m)), (new Rpe(5.50m).ToString(), new Rpe(5.500m)));

    /// <summary>Source: session RPE is minutes times rating, Foster et al. 2001, J Strength Cond Res 15(1):109-115. Halves round away from zero.</summary>
    [Theory]
    [InlineData(90, 5.5, 495)]
    [InlineData(110, 7.5, 825)]
    [InlineData(45, 6.5, 293)]
    [InlineData(0, 10, 0)]
    [InlineData(1440, 10, 14_400)]
    public void A_load_is_minutes_times_rpe(int minutes, double rpe, int au) => Assert.Equal(new Load(au), Load.Of(new Minutes(minutes), new Rpe((decimal)rpe)));

    [Fact]
    public void Loads_add_up_and_stop_at_the_most() => Gen.Select(Any.AnyLoad, Any.AnyLoad, Any.AnyLoad, Gen.Int[0, 14]).Sample((a, b, c, times) =>
    {
        Assert.Equal(a + b + c, c + (b + a));
        Assert.Equal(a, a + Load.Zero);
        Assert.Equal(Enumerable.Repeat(a, times).Aggregate(Load.Zero, (sum, load) => sum + load), times * a);
        Assert.InRange((a + b).Au, a.Au, Load.Most);
    }, iter: 1_000);

    /// <summary>To per cent of a hard week and back is off by at most half a per cent, as far as the scale reaches.</summary>
    [Fact]
    public void Per_cent_and_load_agree() => Gen.Select(Any.AnyLoad, Gen.Int[1, Load.Most]).Sample((load, reference) =>
    {
        var percent = load.PercentOf(new Load(reference));
        var back = Load.FromPercent(percent, new Load(reference));
        if (load.Au <= 3L * reference) Assert.InRange(back.Au, load.Au - reference / 200m - 1, load.Au + reference / 200m + 1);
        else Assert.Equal(Percent.Most, percent.Value);
    }, iter: 1_000);

    [Fact]
    public void Half_a_per_cent_rounds_away_from_zero() => Assert.Equal(new Percent(3), new Load(25).PercentOf(new Load(1000)));

    [Fact]
    public void Nothing_is_nothing_per_cent_of_nothing() => Assert.Equal(new Percent(0), Load.Zero.PercentOf(Load.Zero));

    [Fact]
    public void A_span_of_days_holds_both_ends()
    {
        var span = new DaySpan(new(2027, 7, 5), new(2027, 7, 11));
        Assert.Equal((7, true, true, false), (span.Length, span.Contains(span.First), span.Contains(span.Last), span.Contains(span.Last.AddDays(1))));
        Assert.Throws<ArgumentException>(() => new DaySpan(span.Last, span.First));
        Assert.Equal(1, DaySpan.Of(span.First).Length);
    }

    [Fact]
    public void Spans_share_the_days_that_both_hold() => Gen.Select(Any.DaySpans, Any.DaySpans).Sample((a, b) =>
    {
        var shared = a.Days().Count(b.Contains);
        Assert.Equal(shared, a.SharedDays(b));
        Assert.Equal(shared, b.SharedDays(a));
        Assert.Equal(shared > 0, a.Overlaps(b));
        Assert.Equal(a.Length, a.Days().Count());
    }, iter: 500);
}
