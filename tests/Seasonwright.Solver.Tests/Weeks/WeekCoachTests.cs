using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>What a coach would send back. Figures of rules are the rulebook's; the others are common practice, no source. "C240" are 2,400 AU, 75 points of the usual week.</summary>
public class WeekCoachTests
{
    private static WeekProblem Read(Season season, int number = 1) => WeekProblem.Of(season, Seasons.Team, season.Weeks[number - 1], season.Weeks[number - 1].Days.First);

    private static WeekProposal Of(Season season, int number = 1) => WeekProposals.Of(Read(season, number));

    private static Session Made(string id, int week, int day, SessionKind kind, int minutes = 55, decimal rpe = 7, DaySlot slot = DaySlot.Afternoon) => new(new(id), Plans.Day(week, day), slot, kind, new Minutes(minutes), new Rpe(rpe));

    private static SetSession Practice(int week, int day, int minutes = 90) => new(Made($"p{week}.{day}", week, day, SessionKind.Practice, minutes, 5.5m, DaySlot.Evening));

    private static IEnumerable<(int Day, SessionKind Kind, int Minutes)> Laid(WeekProposal proposal) => proposal.Sessions.Select(session => (session.Day, session.Kind, session.Minutes));

    /// <summary>day-before-match-heavy, max_rpe 4 and max_minutes 60; day-after-match-hard, max_rpe_first 4; full-rest-day-missing.</summary>
    [Theory]
    [InlineData("CO: C240/3", 6)]
    [InlineData("CO: G290/3/6", 5)]
    [InlineData("CO: C240", 7)]
    public void Assumed_practices_are_light_around_matches_and_leave_a_day_free(string plan, int count)
    {
        var problem = Read(Plans.Of(plan, new SetPractices(Plans.Week(1), Plans.Week(1), new Practices(count, new Minutes(90), new Rpe(7.5m)))));
        Assert.Equal(count, problem.Given.Count);
        Assert.All(problem.Given.Where(session => problem.Days[session.Day].ToNext == 1), session => Assert.True(session is { Rpe: <= 4, Minutes: <= 60 }));
        Assert.All(problem.Given.Where(session => problem.Days[session.Day].SinceLast == 1), session => Assert.True(session.Rpe <= 4));
        Assert.Contains(problem.Days, day => !day.IsMatch && problem.Given.All(session => session.Day != day.Index));
    }

    [Fact]
    public void A_session_of_one_group_is_nothing_to_the_others()
    {
        var season = Plans.Of("CO: C240/6+s2v1p1", new SetGroup(new GroupLine(new("r"), "Rookies")), new SetGroup(new GroupLine(new("k"), "Keepers")));
        var legs = Made("legs", 1, 1, SessionKind.LowerStrength) with { Groups = new([new("r")]) };
        var with = Plans.After(season, [new SetSession(legs)]);
        Assert.Equal(Laid(Of(season)), Laid(Of(with)));
        Assert.Equal(Read(season).Ours, Read(with).Ours);
        // For its own group it is there, and for all groups it is there for everyone.
        Assert.Contains(WeekProblem.Of(with, Seasons.Team, with.Weeks[0], Plans.Day(1, 1), new("r")).Standing, session => session.Id == legs.Id);
        Assert.Contains(Read(Plans.After(season, [new SetSession(legs with { Groups = new([new("k"), new("r")]) })])).Standing, session => session.Id == legs.Id);
    }

    /// <summary>full-rest-day-missing: Sunday was free but for a bus of seven hours, or a test, and six days before it were trained: a free day is due at once.</summary>
    [Fact]
    public void A_day_of_a_long_journey_or_a_test_before_the_week_was_no_rest()
    {
        var season = Plans.Of("CO: C240 C240", [.. Enumerable.Range(1, 6).Select(day => Practice(1, day))]);
        Assert.Equal(6, Read(season, 2).RestBy);
        Leg bus = new(Plans.Day(1, 7), "A", "B", new(9, 0), new(16, 0));
        Assert.Equal(0, Read(Plans.After(season, [new SetEvent(new Event(new("t"), EventKind.Travel, "Bus", DaySpan.Of(bus.Day), Legs: [bus]))]), 2).RestBy);
        Assert.Equal(6, Read(Plans.After(season, [new SetEvent(new Event(new("t"), EventKind.Travel, "Bus", DaySpan.Of(bus.Day), Legs: [bus with { Arrives = new(12, 0) }]))]), 2).RestBy);
        Assert.Equal(0, Read(Plans.After(season, [new SetTestDay(new TestDay(new("d"), Plans.Day(1, 7), "Jump"))]), 2).RestBy);
    }

    /// <summary>A first week back after a fortnight off: general work on the first day, sprints and intervals from the third, each once, and four sets at most for the legs.</summary>
    [Fact]
    public void A_first_week_back_begins_with_general_work()
    {
        var season = Plans.Of("GP: B300 B300 X0 X0 E190+s2h2v1a2m1 B240+s2h2v1a2m1", [Practice(5, 1), Practice(5, 2), Practice(5, 4)]);
        var proposal = Of(season, 5);
        Assert.True(proposal.Problem.IsBack);
        Assert.False(Read(season, 6).IsBack);
        Assert.DoesNotContain(proposal.Asked, asked => asked.Day < 2 && asked.Quality is QualityKind.Speed or QualityKind.HighIntensityConditioning && asked.Day < 2);
        Assert.All(proposal.Sessions.Where(session => session.Day == 0), session => Assert.True(session.Kind is SessionKind.Endurance or SessionKind.Prevention or SessionKind.UpperStrength or SessionKind.Recovery));
        Assert.All(new[] { (QualityKind.Speed, SessionKind.Speed), (QualityKind.HighIntensityConditioning, SessionKind.Intervals) }, fast =>
            Assert.InRange(proposal.Asked.Count(asked => asked.Quality == fast.Item1) + proposal.Sessions.Count(session => session.Kind == fast.Item2), 0, 1));
        Assert.Contains(proposal.Sessions, session => session.Kind == SessionKind.Endurance);
        Assert.All(Edited(season, proposal).Where(session => session.Kind == SessionKind.LowerStrength), session => Assert.InRange(session.Doses![0].Sets!.Value, 1, 4));
    }

    /// <summary>A flight through the night from a tournament of three days, six zones east, landing on Tuesday at 9:30 (travel-day-load; time-zone-arrival: three zones count).</summary>
    [Theory]
    [InlineData("*Travel,2.1,2.1@22:00-09:30n+6")]
    [InlineData("*Travel,2.1,2.1@08:00-23:30n")]
    public void Coming_home_from_afar_is_a_day_off_and_an_easy_one(string journey)
    {
        var proposal = Of(Plans.Of($"CO: G260/5/6/7 C250/7+s1v1h1a1 {journey}"), 2);
        Assert.Equal(WeekTravel.Arrival, proposal.Problem.Days[1].Travel);
        Assert.All(proposal.All.Where(session => session.Day == 1), session => Assert.Equal(SessionKind.Recovery, session.Kind));
        Assert.All(proposal.All.Where(session => session.Day == 2), session => Assert.True(session.Rpe <= 4));
        var legs = new WeekSession(4, DaySlot.Morning, SessionKind.LowerStrength, 55, 7, [QualityKind.MaximumStrength]);
        Assert.Contains(WeekProposals.WhyNot(proposal, legs, 2, DaySlot.Morning), reason => reason.Rule == "travel-day-load");
    }

    /// <summary>A match on Friday, Saturday or Sunday: none of the three days holds anything, and Thursday is the day before.</summary>
    [Fact]
    public void A_match_whose_day_is_open_keeps_all_its_days_clear()
    {
        var proposal = Of(Plans.Of("CO: C240+s1v2p1", new SetMatch(new Match(new("cup"), Plans.Day(1, 5), Plans.Day(1, 7), Status: MatchStatus.Window))));
        Assert.Equal(1, proposal.Problem.Matches);
        Assert.DoesNotContain(proposal.All, session => session.Day >= 4);
        Assert.Equal(1, proposal.Problem.Days[3].ToNext);
        Assert.All(proposal.All.Where(session => session.Day == 3), session => Assert.True(session.Rpe <= 4));
        var speed = new WeekSession(1, DaySlot.Morning, SessionKind.Speed, 30, 5, [QualityKind.Speed]);
        Assert.Contains(WeekProposals.WhyNot(proposal, speed, 5, DaySlot.Morning), reason => reason.Sentence.StartsWith("A match whose day is open", StringComparison.Ordinal));
        Assert.Equal("A match may be played on any day that is left: give it its day first.", Of(Plans.Of("CO: C240", new SetMatch(new Match(new("cup"), Plans.Day(1, 1), Plans.Day(1, 7), Status: MatchStatus.Window)))).Short[0].Sentence);
    }

    [Fact]
    public void A_weekend_without_a_match_is_free_where_the_week_has_room()
    {
        var proposal = Of(Plans.Of("CO: B230+s1p1v1h1m1", [Practice(1, 1), Practice(1, 2), Practice(1, 4)]));
        Assert.DoesNotContain(proposal.All, session => session.Day > 4);
    }

    [Fact]
    public void One_visit_to_the_gym_a_day()
    {
        var proposal = Of(Plans.Of("CO: G300/3/7+s1p2v1m1"));
        Assert.All(proposal.Problem.Days, day => Assert.InRange(proposal.Sessions.Count(session => session.Day == day.Index && SessionUse.Of(session.Kind).IsGym), 0, 1));
    }

    /// <summary>Half an hour of high intensity at most, and five minutes for what it carries.</summary>
    [Fact]
    public void An_easier_week_has_short_intervals() =>
        Assert.All(Of(Plans.Of("CO: U260/6+s1h2v1")).Sessions.Where(session => session.Kind == SessionKind.Intervals), session => Assert.InRange(session.Minutes, 20, 35));

    [Fact]
    public void The_leave_after_the_season_has_three_sessions_at_most() =>
        Assert.InRange(Of(Plans.Of("TR: N100+y1s1a1m1")).Sessions.Count, 1, 3);

    /// <summary>test-timing: what practice is asked to hold tires no more than a session of ours would.</summary>
    [Fact]
    public void Practice_is_asked_for_nothing_tiring_the_day_before_a_test()
    {
        var proposal = Of(Plans.Of("GP: B240+h3v1t3", [Practice(1, 2), Practice(1, 3)]));
        Assert.DoesNotContain(proposal.Asked, asked => asked.Day == 1 && asked.Quality == QualityKind.HighIntensityConditioning || asked.Day == 2);
    }

    /// <summary>What stands and breaks nothing stays, with the coach's figures; what stands on the day before a match does not.</summary>
    [Fact]
    public void What_stands_and_breaks_nothing_stays()
    {
        var season = Plans.Of("CO: C270/6 C270/6+s1p1v1m1", Practice(2, 2), Practice(2, 4));
        var stands = Made("power", 2, 1, SessionKind.Power, 60, 5) with { Doses = new([new Dose(Quality.Defaults.First(quality => quality.Kind == QualityKind.Power).Id, Contacts: 33)]) };
        var upper = Made("upper", 2, 3, SessionKind.UpperStrength, 50, 6.5m, DaySlot.Evening) with { Start = new(18, 15) };
        var after = Plans.After(season, [new SetSession(stands), new SetSession(upper), new SetSession(Made("late", 2, 5, SessionKind.LowerStrength))]);
        var edits = WeekEdits.Of(after, Seasons.Team, Of(after, 2), (kind, key) => $"{kind}-{key.Replace(' ', '-')}");
        Assert.Equal("late", Assert.Single(edits.OfType<RemoveSession>()).Session.Text);
        Assert.Equal(stands.Doses, edits.OfType<SetSession>().FirstOrDefault(edit => edit.Session.Id == stands.Id && edit.Session.Minutes == stands.Minutes)?.Session.Doses ?? after.Session(stands.Id)!.Doses);
        Assert.All(edits.OfType<SetSession>().Where(edit => edit.Session.Id == upper.Id), edit => Assert.Equal((upper.Rpe, upper.Slot, upper.Start), (edit.Session.Rpe, edit.Session.Slot, edit.Session.Start)));
    }

    /// <summary>A week that asks for speed has a dose of ours that is counted, not one asked of practice alone (sprint-exposure-gap).</summary>
    [Fact]
    public void Speed_that_is_asked_for_is_not_left_to_practice() =>
        Assert.Contains(Of(Plans.Of("CO: C240/6+s1v1", [Practice(1, 1), Practice(1, 2), Practice(1, 3), Practice(1, 4)])).Sessions, session => session.Kind == SessionKind.Speed);

    /// <summary>Load and dose are one thing: what a longer week asks for is more sets in more minutes.</summary>
    [Fact]
    public void A_larger_target_is_more_work_and_not_longer_rests()
    {
        int Sets(string plan) => Plans.Of(plan, Practice(2, 1), Practice(2, 2), Practice(2, 4)) is var season ? Edited(season, Of(season, 2)).Where(session => session.Kind == SessionKind.LowerStrength).Sum(session => session.Doses![0].Sets!.Value) : 0;
        Assert.InRange(Sets("GP: B200 B200+s2"), 5, Sets("GP: B200 B250+s2") - 4);
    }

    private static IEnumerable<Session> Edited(Season season, WeekProposal proposal) => WeekEdits.Of(season, Seasons.Team, proposal, (kind, key) => $"{kind}-{key.Replace(' ', '-')}").OfType<SetSession>().Select(edit => edit.Session);
}
