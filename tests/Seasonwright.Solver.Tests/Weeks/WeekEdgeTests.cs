using System.Text.RegularExpressions;
using System.Xml.Linq;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>Weeks that are not like others: a proposal or a reason, never an exception. "C240" are 2,400 AU, 75 points of the usual week.</summary>
public class WeekEdgeTests
{
    private static WeekProposal Of(Season season, int number = 1, DateOnly? from = null) =>
        WeekProposals.Of(WeekProblem.Of(season, Seasons.Team, season.Weeks[number - 1], from ?? season.Weeks[number - 1].Days.First));

    private static SetSession Practice(int week, int day, DaySlot slot = DaySlot.Evening) =>
        new(new Session(new($"p{week}.{day}.{slot}"), Plans.Day(week, day), slot, SessionKind.Practice, new Minutes(90), new Rpe(5.5m)));

    [Theory]
    [InlineData("GP: X0", "The week is a break: nothing is laid out.")]
    [InlineData("GP: - *Holiday,1.1-1.7,0%", "The week is a break: nothing is laid out.")]
    [InlineData("CO: C224/1/2/3/4/5/6/7", "No day is left on which the squad can train.")]
    [InlineData("CO: C224/7 *Holiday,1.1-1.6,0%", "No day is left on which the squad can train.")]
    public void Nothing_is_laid_out_for_a_reason(string plan, string reason)
    {
        var proposal = Of(Plans.Of(plan));
        Assert.Equal((reason, 0), (Assert.Single(proposal.Short).Sentence, proposal.Sessions.Count));
        Assert.Empty(WeekEdits.Of(Plans.Of(plan), Seasons.Team, proposal, (kind, key) => $"{kind}{key}"));
    }

    [Fact]
    public void Locked_and_past_weeks_are_left()
    {
        var season = Plans.Of("CO: C224/6 C224/6", new LockWeeks(Plans.Week(2), Plans.Week(2), true));
        Assert.Equal("The week is locked: unlock it to have it laid out.", Of(season, 2).Short[0].Sentence);
        Assert.Equal("The week has passed.", Of(season, 1, Plans.Day(2, 1)).Short[0].Sentence);
        // Of a week that has begun only the days left are laid out.
        Assert.All(Of(season, 1, Plans.Day(1, 3)).Sessions, session => Assert.True(session.Day >= 2));
    }

    /// <summary>A tournament of three days: nothing of ours beside it, what fits before it.</summary>
    [Fact]
    public void Three_matches_in_a_row()
    {
        var proposal = Of(Plans.Of("CO: G290/5/6/7+s1v1"));
        Assert.All(proposal.Sessions, session => Assert.True(session.Day < 4));
        Assert.Empty(WeekJudge.Of(proposal.Problem, proposal.Sessions));
    }

    [Fact]
    public void A_camp_with_practice_twice_a_day()
    {
        var season = Plans.Of("GP: B320+s2y2a2m1 *Camp,1.1-1.5,130%", [.. Enumerable.Range(1, 5).SelectMany(day => new[] { Practice(1, day, DaySlot.Morning), Practice(1, day) })]);
        var proposal = Of(season);
        Assert.Empty(WeekJudge.Of(proposal.Problem, proposal.Sessions));
        // The day's third slot is the afternoon.
        Assert.All(proposal.Sessions.Where(session => session.Day < 5), session => Assert.Equal(DaySlot.Afternoon, session.Slot));
    }

    [Fact]
    public void Practices_on_every_day_leave_no_day_off_and_that_is_told()
    {
        var proposal = Of(Plans.Of("GP: B320+s2", [.. Enumerable.Range(1, 7).Select(day => Practice(1, day))]));
        Assert.Contains(proposal.Short, one => one.Rule == "full-rest-day-missing");
        Assert.Empty(WeekJudge.Of(proposal.Problem, proposal.Sessions));
    }

    [Fact]
    public void A_short_first_week_has_the_days_it_has()
    {
        var season = Seasons.Made([Seasons.Start(new DateOnly(2027, 7, 8), 2), new SetWeekLoad(new("w1"), new("w1"), new Load(1200)), new SetWeekKind(new("w1"), new("w1"), WeekKind.Introductory)]);
        var proposal = Of(season);
        Assert.Equal(4, proposal.Problem.Days.Count);
        Assert.NotEmpty(proposal.Sessions);
        Assert.Empty(WeekJudge.Of(proposal.Problem, proposal.Sessions));
    }

    /// <summary>A match on Sunday makes the Monday after it a day for recovery or light upper-body work, whatever week it lies in.</summary>
    [Fact]
    public void A_match_of_the_week_before_reaches_into_the_week()
    {
        var problem = WeekProblem.Of(Plans.Of("CO: C224/7 C224/7"), Seasons.Team, Plans.Of("CO: C224/7 C224/7").Weeks[1], Plans.Day(2, 1));
        Assert.Equal((1, 6), (problem.Days[0].SinceLast, problem.Days[0].ToNext));
        Assert.Equal([-1], problem.MatchesBeside);
    }

    /// <summary>Three days without practice known: as many as the load of the kind asks for, none on the day after the match.</summary>
    [Fact]
    public void Practices_are_assumed_on_likely_days_and_told()
    {
        var season = Plans.Of("CO: C240/6 C240/6");
        var problem = WeekProblem.Of(season, Seasons.Team, season.Weeks[1], Plans.Day(2, 1));
        Assert.Equal(3, problem.Given.Count);
        Assert.All(problem.Given, session => Assert.True(session.IsAssumed && session.Day is not (5 or 6)));
        Assert.Contains(WeekProposals.Of(problem).Short, one => one.Sentence.StartsWith("The days of practice are assumed", StringComparison.Ordinal));
        // Known days of weeks before are taken for habits.
        season = Plans.After(season, [Practice(1, 1), Practice(1, 3), Practice(1, 4)]);
        Assert.Equal([0, 2, 3], WeekProblem.Of(season, Seasons.Team, season.Weeks[1], Plans.Day(2, 1)).Given.Where(session => session.IsAssumed).Select(session => session.Day));
    }

    [Fact]
    public void Locked_sessions_and_those_of_single_groups_stay_and_others_give_way()
    {
        var gym = new Session(new("locked"), Plans.Day(1, 2), DaySlot.Morning, SessionKind.LowerStrength, new Minutes(50), new Rpe(7), IsLocked: true);
        var season = Plans.Of("CO: C240/6+s1p1", new SetGroup(new GroupLine(new("keepers"), "Keepers")), new SetSession(gym),
            new SetSession(gym with { Id = new("keepers"), Day = Plans.Day(1, 1), Groups = new([new("keepers")]), IsLocked = false }),
            new SetSession(gym with { Id = new("open"), Day = Plans.Day(1, 7), Kind = SessionKind.Endurance, IsLocked = false }));
        var edits = WeekEdits.Of(season, Seasons.Team, Of(season), (kind, key) => $"{kind}-{key.Replace(' ', '-')}");
        Assert.Equal("open", Assert.Single(edits.OfType<RemoveSession>()).Session.Text);
        Assert.DoesNotContain(edits.OfType<SetSession>(), edit => edit.Session.Id.Text is "locked" or "keepers");
    }

    /// <summary>Wednesday's heavy session has reasons with rules, and those named against Thursday keep it from there.</summary>
    [Fact]
    public void Reasons_name_the_rules()
    {
        var season = Plans.Of("CO: C240/6 C240/6+s2p1v1");
        var proposal = Of(season, 2);
        var legs = proposal.Sessions.First(session => session.Kind is SessionKind.LowerStrength or SessionKind.SmallDose);
        var reasons = proposal.Reasons[proposal.Sessions.ToList().IndexOf(legs)];
        Assert.Contains(reasons, reason => reason.Sentence.StartsWith("Serves maximum strength", StringComparison.Ordinal));
        Assert.Contains(reasons, reason => reason.Rule is "heavy-lower-before-match" or "day-before-match-heavy");
        Assert.Contains(WeekProposals.WhyNot(proposal, legs, 4, DaySlot.Morning), reason => reason.Rule == "day-before-match-heavy");
    }

    /// <summary>Every sentence exists, and every one that exists is said.</summary>
    [Fact]
    public void Words_and_conditions_match()
    {
        var folder = System.IO.Path.GetDirectoryName(Directory.GetFiles(Root(), "WeekWords.resx", SearchOption.AllDirectories)[0])!;
        var words = XDocument.Load(System.IO.Path.Combine(folder, "WeekWords.resx")).Root!.Elements("data").Select(data => data.Attribute("name")!.Value).ToHashSet(StringComparer.Ordinal);
        var source = string.Join('\n', Directory.GetFiles(folder, "*.cs").Select(File.ReadAllText));
        var conditions = Regex.Matches(source, "new\\(\"(?<name>[a-z-]+)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(match => $"condition.{match.Groups["name"].Value}").ToList();
        Assert.True(conditions.Count > 25);
        Assert.All(conditions, name => Assert.True(words.Contains(name), name));
        Assert.All(words, name => Assert.True(name.StartsWith("quality.", StringComparison.Ordinal) || conditions.Contains(name, StringComparer.Ordinal) || source.Contains($"\"{name}\"", StringComparison.Ordinal), name));
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(System.IO.Path.Combine(folder.FullName, "Seasonwright.slnx"))) folder = folder.Parent!;
        return System.IO.Path.Combine(folder.FullName, "src", "Seasonwright.Solver");
    }
}
