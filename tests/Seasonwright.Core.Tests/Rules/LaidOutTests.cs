using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Tests.Rules;

/// <summary>What is laid out on days stands for the target once the week is marked ready, and not before.</summary>
public class LaidOutTests
{
    /// <summary>Four weeks at 60 points; in the fourth 30 points of practice and 60 of ours are laid out: 90 after 60.</summary>
    private static SeasonEdit[] LaidOut(params SeasonEdit[] more) =>
    [
        .. Enumerable.Range(0, 5).Select(day => Of($"p{day}", day, SessionKind.Practice, 60)),
        .. Enumerable.Range(0, 5).Select(day => Of($"o{day}", day, SessionKind.Power, 120)),
        .. more,
    ];

    private static SetSession Of(string id, int day, SessionKind kind, int au) =>
        new(new Session(new(id), Plans.Day(4, 1 + day), DaySlot.Morning, kind, new Minutes(au / 6), new Rpe(6)));

    private static string Ramp(params SeasonEdit[] more) => string.Join(", ", Rulebook.Check(Plans.Of("GP: B60x4", more), Plans.Team()).Findings
        .Where(finding => finding.Rule.Id == "weekly-ramp").Select(finding => finding.Place.Weeks.ToString()));

    [Fact]
    public void Rules_read_what_is_laid_out_of_a_week_that_is_ready()
    {
        Assert.Equal("", Ramp());
        Assert.Equal("", Ramp(LaidOut()));
        Assert.Equal("4", Ramp(LaidOut(new MarkReady(Plans.Week(4), Plans.Week(4), true))));
        // Ready with nothing of ours on its days, it is the target.
        Assert.Equal("", Ramp(new MarkReady(Plans.Week(4), Plans.Week(4), true)));
    }

    [Fact]
    public void A_dose_is_of_a_quality_on_the_teams_list()
    {
        var (season, team) = (Plans.Of("GP: B60x4"), Plans.Team());
        var session = new Session(new("s"), Plans.Day(1, 1), DaySlot.Morning, SessionKind.Power, new Minutes(40), new Rpe(5), Doses: new([new Dose(new("power")), new Dose(new("gliding"))]));
        Assert.Equal(("quality-unknown", "session/s.doses"), Assert.IsType<Refused>(RuledDecider.Decide(season, team, new SetSession(session))).Reasons.Select(reason => (reason.Id, reason.Subject)).Single());
        // What the season knows of a quality since taken off the list stays.
        season = Plans.After(season, [new SetSession(session)]);
        Assert.IsType<Accepted>(RuledDecider.Decide(season, team, new SetSession(session with { Day = Plans.Day(1, 2) })));
    }
}
