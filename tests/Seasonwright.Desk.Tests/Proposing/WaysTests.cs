using Seasonwright.Desk.Proposing;

namespace Seasonwright.Desk.Tests.Proposing;

public class WaysTests
{
    [Theory]
    [InlineData(33, 34, 47, 32)]
    // A small difference long before the match does not push it out.
    [InlineData(10, 34, 47, 29)]
    // None differs, or only later ones: from the match on.
    [InlineData(47, 34, 47, 34)]
    [InlineData(40, 34, 47, 34)]
    // Near the ends of the season.
    [InlineData(0, 1, 47, 0)]
    [InlineData(46, 46, 47, 39)]
    public void Eight_weeks_are_shown_and_the_match_is_always_among_them(int differs, int match, int weeks, int first)
    {
        var (start, count) = Ways.Shown(differs, match, weeks).GetOffsetAndLength(weeks);
        Assert.Equal((first, 8), (start, count));
        Assert.InRange(match, start, start + count - 1);
    }

    [Fact]
    public void A_short_season_is_shown_whole() => Assert.Equal(0..5, Ways.Shown(2, 4, 5));
}
