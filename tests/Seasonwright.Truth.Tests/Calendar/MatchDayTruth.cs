using CsCheck;
using Seasonwright.Core.Calendar;

namespace Seasonwright.Truth.Tests.Calendar;

/// <summary>Common practice, no source: days are named by the nearer match, MD-n before and MD+n after it; the coming match names a day as near to both.</summary>
public class MatchDayTruth
{
    private static readonly DateOnly Saturday = new(2027, 10, 16);

    private static readonly DateOnly[] SaturdayAndWednesday = [Saturday, Saturday.AddDays(4)];

    [Theory]
    [InlineData(-8, 8, null, "MD-8")]
    [InlineData(-1, 1, null, "MD-1")]
    [InlineData(0, 0, 0, "MD")]
    [InlineData(1, 3, 1, "MD+1")]
    [InlineData(2, 2, 2, "MD-2")]
    [InlineData(3, 1, 3, "MD-1")]
    [InlineData(4, 0, 0, "MD")]
    [InlineData(5, null, 1, "MD+1")]
    [InlineData(30, null, 26, "MD+26")]
    public void Days_around_a_saturday_and_a_wednesday_match(int day, int? toNext, int? sinceLast, string label)
    {
        var matchDay = MatchDay.Of(Saturday.AddDays(day), SaturdayAndWednesday);
        Assert.Equal((new MatchDay(toNext, sinceLast), label), (matchDay, matchDay.Label));
    }

    [Fact]
    public void A_season_without_matches_has_no_match_days() => Assert.Equal("", MatchDay.Of(Saturday, []).Label);

    /// <summary>Over any list of matches the offsets are the distances to both neighbours, whatever month or year lies between.</summary>
    [Fact]
    public void Offsets_are_the_distances_to_both_neighbours() =>
        Gen.Select(Gen.Int[0, 400].HashSet[0, 60], Gen.Int[-20, 420]).Sample((offsets, at) =>
        {
            var day = Saturday.AddDays(at);
            var matches = offsets.Order().Select(offset => Saturday.AddDays(offset)).ToList();
            var next = matches.Where(match => match >= day).Select(match => (int?)(match.DayNumber - day.DayNumber)).Min();
            var last = matches.Where(match => match <= day).Select(match => (int?)(day.DayNumber - match.DayNumber)).Min();
            Assert.Equal(new MatchDay(next, last), MatchDay.Of(day, matches));
        }, iter: 2_000);
}
