using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Which weeks are tapers, told from the calendar. Weeks as letters: s short, f and F the earlier and the last of a longer taper, b before a week of many matches.</summary>
public class TapersTests
{
    private static string Read(string season, Wishes? wishes = null, StartLevel start = StartLevel.Home) =>
        string.Concat(Tapers.Of(Problem.Of(Plans.Of(season), Plans.Team(), (wishes ?? new Wishes()) with { Start = start })).Select(part => part switch
        {
            Variant.None => '-',
            Variant.Short => 's',
            Variant.FullEarlier => 'f',
            Variant.FullLast => 'F',
            Variant.BeforeMany => 'b',
            _ => '?',
        }));

    [Theory]
    // The match's own week from its fifth day on, else the week before.
    [InlineData("-x3 -/6x3 -/6! -/6", "------s-")]
    [InlineData("-x3 -/6x3 -/5! -/6", "------s-")]
    [InlineData("-x3 -/6x3 -/4! -/6", "-----s--")]
    [InlineData("-x3 -/6x3 -/1! -/6", "-----s--")]
    // Two weeks where more than ten days of training are free of matches: 11 and 10 before a Friday and a Thursday.
    [InlineData("-x3 -/6x3 - -/6!", "------fF")]
    [InlineData("-x3 -/7x3 - -/5!", "------fF")]
    [InlineData("-x3 -/7x3 - -/4!", "------s-")]
    // Not over exams.
    [InlineData("-x3 -/6x3 - -/6! *Exams,7.1-7.7,60%", "-------s")]
    // Key matches within fourteen days are one cluster: tapered for the first, held until the last, three weeks at most.
    [InlineData("-x3 -/6x3 -/6! -/6! -/6! -/6", "------ffF-")]
    [InlineData("-x3 -/6x3 -/6! -/6 -/6! -/6", "------ffF-")]
    [InlineData("-x3 -/6x3 -/6! -/2/6 -/6! -/6", "------ffF-")]
    [InlineData("-x3 -/6x3 - -/6! -/6! -/6", "------ffF-")]
    [InlineData("-x3 -/6x3 - -/6! -/6! -/6! -/6", "-------ffF-")]
    [InlineData("-x3 -/6x3 -/6! -/6! -/6! -/6! -/6", "------s----")]
    [InlineData("-x3 -/6x3 -/6! - -/6! -/6 *Holiday,8.1-8.7,0%", "------s---")]
    [InlineData("-x3 -/6x3 -/1/3/5! -/6! -/6", "-----bfF-")]
    // Six weeks apart and three at most, counted back from the last.
    [InlineData("-x3 -/6x3 -/6! -/6x4 -/6!", "-----------s")]
    [InlineData("-x3 -/6x3 -/6! -/6x5 -/6!", "------s-----s")]
    [InlineData("-x3 -/6x3 -/6! -/6x5 -/6! -/6x5 -/6! -/6x5 -/6!", "------------s-----s-----s")]
    // Where a longer one would begin too soon it is short.
    [InlineData("-x3 -/6x3 -/6! -/6x4 - -/6! -x2", "------s-----s--")]
    [InlineData("-x3 -/6x3 -/6! -/6x5 - -/6! -x2", "------s-----fF--")]
    // One that cannot be tapered for keeps no other from it.
    [InlineData("-x3 -/6x3 -/6! -/6x2 - -/6! -/6 *Holiday,10.1-10.7,0%", "------s-----")]
    // Nowhere near a break, nor before anything was trained.
    [InlineData("-x3 -/6x3 - -/6! *Holiday,7.1-7.7,0%", "--------")]
    [InlineData("-/6x2 -x2 -/6 -/6! *Holiday,3.1-4.7,0%", "------")]
    [InlineData("-/6! -/6", "--")]
    [InlineData("- -/6! -/6", "---")]
    // Nor before two ordinary weeks have passed since the first two back from a long absence: exams are none.
    [InlineData("-x3 -/6x3 -x2 -/6x2 -/6! -/6 *Holiday,7.1-8.7,0%", "------------")]
    [InlineData("-x3 -/6x3 -x2 -/6x3 -/6! -/6 *Holiday,7.1-8.7,0%", "-------------")]
    [InlineData("-x3 -/6x3 -x2 -/6x4 -/6! -/6 *Holiday,7.1-8.7,0%", "------------s-")]
    [InlineData("-x3 -/6x3 -x2 -/6x4 -/6! -/6 *Holiday,7.1-8.7,0% *Exams,10.1-11.7,60%", "--------------")]
    [InlineData("-x3 -/6x3 -x2 -/6x4 - -/6! *Holiday,7.1-8.7,0%", "------------fF")]
    [InlineData("-x3 -/6x3 -x2 -/6x3 - -/6! *Holiday,7.1-8.7,0%", "------------s")]
    // Other matches lead up to it.
    [InlineData("-x3 -/6x3 -/1/3/5! -/6", "-----bF-")]
    [InlineData("-x3 -/6x3 -/2/6! -/6", "------s-")]
    [InlineData("-x3 -/6x3 -/3/6! -/6", "------s-")]
    public void Weeks_are_tapers_by_the_calendar(string season, string parts) => Assert.Equal(parts, Read(season));

    [Fact]
    public void What_the_coach_says_goes_before()
    {
        const string season = "-x3 -/6x3 -/6! -/6x2 -/6! -/6x5 -/6!";
        Assert.Equal("---------s-----s", Read(season));
        MatchId early = new("m7.6"), middle = new("m10.6"), last = new("m16.6");
        // A taper asked for stands, and what is too near to it does not.
        Assert.Equal("------s--------s", Read(season, new Wishes { Tapers = [new(early, TaperStyle.Short)] }));
        Assert.Equal("------s--s-----s", Read(season, new Wishes { Tapers = [new(early, TaperStyle.Short), new(middle, TaperStyle.Short)] }));
        Assert.Equal("------s---------", Read(season, new Wishes { Tapers = [new(middle, TaperStyle.None), new(last, TaperStyle.None)] }));
        Assert.Equal("--------fF-----s", Read(season, new Wishes { Tapers = [new(middle, TaperStyle.Full)] }));
        // Soon after an absence, too.
        Assert.Equal("-----------s-", Read("-x3 -/6x3 -x2 -/6x3 -/6! -/6 *Holiday,7.1-8.7,0%", new Wishes { Tapers = [new(new("m12.6"), TaperStyle.Short)] }));
        // Of a match that is not in the season nothing follows.
        Assert.Equal("---------s-----s", Read(season, new Wishes { Tapers = [new(new("none"), TaperStyle.Full)] }));
    }
}
