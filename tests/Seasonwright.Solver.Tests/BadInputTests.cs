using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Seasons and locks that ask for much or nothing: a whole proposal, or what clashes by name; never an exception.</summary>
public class BadInputTests(ITestOutputHelper output)
{
    private static Proposal Proposed(string season, params LockWeeks[] locks) =>
        Assert.Single(Proposals.Of(Plans.Of(season, locks), Plans.Team(), new Wishes(), 1, (kind, key) => $"{kind}-{key}"));

    private static LockWeeks Locked(int first, int last) => new(Plans.Week(first), Plans.Week(last), Locked: true);

    [Theory]
    [InlineData("-/6! -/6x8")]
    [InlineData("-x12")]
    [InlineData("-")]
    [InlineData("-/6!")]
    [InlineData("-/1/2/3/4/5/6/7x8")]
    [InlineData("-x6 -/6x8 *Holiday,1.1-14.7,0%")]
    [InlineData("-x4 -/6x8 *Holiday,1.1-14.7,0%")]
    [InlineData("-x5 -/3/6x36 -/1/3/5/6x2 -/6!x2 -x2")]
    public void Odd_calendars_have_a_plan(string season)
    {
        var proposal = Proposed(season);
        Assert.Null(proposal.Clash);
        Assert.Equal(proposal.Structure.Weeks.Count, proposal.Loads.Points.Count);
        Assert.Empty(proposal.Structure.Broken);
    }

    /// <summary>Four matches in a week of nearly seven times the squad's usual one.</summary>
    [Fact]
    public void A_tournament_far_above_the_usual_week_is_a_fact()
    {
        var team = Plans.Team().With(Assert.IsType<Accepted>(Decider.Decide(Plans.Team(), new SetReferenceWeek(new Load(60)))).Step);
        var proposal = Assert.Single(Proposals.Of(Plans.Of("-x6 -/3/4/5/6! -/6x4"), team, new Wishes(), 1, (kind, key) => $"{kind}-{key}"));
        Assert.Null(proposal.Clash);
        Assert.True(proposal.Loads.Points[6] > 500, $"{proposal.Loads.Points[6]}");
    }

    /// <summary>A lock is a fact: what locked weeks alone break is told, and the other weeks are planned around them.</summary>
    [Theory]
    // An overload in pre-competition, without a specific preparation before it.
    [InlineData("GP: I50 B55 PC: O76 U49 CO: -/6x8", 4, "overload-in-its-place@3")]
    // Five building weeks in a row, a leap, general after specific preparation.
    [InlineData("GP: I50 B55 B57 B60 B65 B70 -x2 -/6x8", 6, "run-limit@5 run-limit@6")]
    [InlineData("SP: B60 B110 GP: B60 -x4 -/6x8", 3, "introductory-first@1 week-back@1")]
    // An unloading week at once, and competition before its time.
    [InlineData("GP: U30 B60 CO: C70 -x3 -/6x8", 3, "introductory-first@1 unloading-after-loading@1 week-back@1")]
    public void Locked_weeks_stand_whatever_rule_they_break(string season, int locked, string told)
    {
        var proposal = Proposed(season, Locked(1, locked));
        Assert.Null(proposal.Clash);
        var broken = proposal.Structure.Broken;
        output.WriteLine(string.Join(' ', broken.Select(one => $"{one.Condition.Name}@{one.Week + 1}")));
        Assert.All(broken, one => Assert.True(one.IsForced && one.Week < locked));
        Assert.All(told.Split(' '), one => Assert.Contains(one, broken.Select(breach => $"{breach.Condition.Name}@{breach.Week + 1}"), StringComparer.Ordinal));
        Assert.All(broken, one => Assert.Contains(proposal.Reasons[one.Week], reason => reason.Sentence == PlanWords.Say("settled", PlanWords.Of(one.Condition))));
        Assert.DoesNotContain(proposal.Edits.OfType<SetWeekLoad>(), edit => Enumerable.Range(1, locked).Any(week => edit.First == Plans.Week(week)));
    }

    /// <summary>Where the weeks before are open a lock can ask for what no plan gives: then it clashes, by name.</summary>
    [Theory]
    [InlineData("-x3 GP: B110 -x4 -/6x8", 4, "ramp locked-load@4")]
    [InlineData("-x6 GP: B70 - -/6x8", 7, "shortest-specific locked-phase@7")]
    public void A_lock_that_no_plan_leads_to_clashes_by_name(string season, int week, string names)
    {
        var proposal = Proposed(season, Locked(week, week));
        Assert.NotNull(proposal.Clash);
        var named = proposal.Clash.Colliding.Select(one => one.Week is { } at ? $"{one.Condition.Name}@{at + 1}" : one.Condition.Name).ToList();
        output.WriteLine(string.Join(' ', named));
        Assert.All(names.Split(' '), one => Assert.Contains(one, named, StringComparer.Ordinal));
        Assert.All(proposal.ClashInWords, sentence => Assert.NotEmpty(sentence));
    }
}
