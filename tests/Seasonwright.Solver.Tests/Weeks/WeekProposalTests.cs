using System.Diagnostics;
using System.Globalization;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Rules;

namespace Seasonwright.Solver.Tests;

/// <summary>
/// Laid-out weeks, judged by <see cref="WeekJudge"/>. A small dose of what ./prove week runs: SEED begins elsewhere, COUNT takes more
/// drawn weeks, WEEKS more of the real leagues'.
/// </summary>
public class WeekProposalTests(ITestOutputHelper output)
{
    /// <summary>Longer than a season.</summary>
    private const int Long = 500;

    private static string Id(string kind, string key) => $"{kind}-{key.Replace(' ', '-')}";

    [Fact]
    public void Drawn_weeks_keep_every_condition()
    {
        var (first, count) = (Seasons.Given("SEED", 1), Seasons.Given("COUNT", 40));
        output.WriteLine($"seeds from {first}");
        for (var seed = first; seed < first + count; seed++)
        {
            var (season, week, from) = WeekSeasons.Drawn(seed);
            Judged($"seed {seed}", season, Seasons.Team, week, from);
        }
    }

    [Fact]
    public void Weeks_of_real_leagues_keep_every_condition()
    {
        var all = ProposalTests.Planned(output).SelectMany(one => one.Season.Weeks.Select(week => (one.Name, one.Season, one.Team, week))).ToList();
        var count = Seasons.Given("WEEKS", 10);
        for (var at = 0; at < count; at++)
        {
            var (name, season, team, week) = all[(int)((long)at * all.Count / count)];
            var proposal = Judged($"{name}, week {week.Number}", season, team, week, week.Days.First);
            if (Seasons.Given("SHOW", 0) is > 0 and var shown && at % Math.Max(1, count / shown) == 0) output.WriteLine($"shown {name}, week {week.Number}: {ShownWeek.Of(proposal)}");
            // The engine's own weeks, laid out by the engine: nothing keeps the load from being met but what is told.
            if (proposal.Problem is { Stop: null, Ours: { } aim, Tests.Count: 0 } && proposal.Sessions.Count > 0)
                Assert.InRange(proposal.Sessions.Sum(session => session.Au), aim - 3 * proposal.Problem.Hundred / 100 - aim / 4, aim + 5 * proposal.Problem.Hundred / 100);
        }
    }

    private WeekProposal Judged(string name, Season season, Setup team, SeasonWeek week, DateOnly from)
    {
        var watch = Stopwatch.StartNew();
        var problem = WeekProblem.Of(season, team, week, from);
        ReadsRight(season, week, from, problem);
        var proposal = WeekProposals.Of(problem);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: week {watch.ElapsedMilliseconds} ms gap {proposal.Gap:P2} {proposal.IsProven}, {proposal.Sessions.Count} sessions"));
        var placed = proposal.Sessions.Where(session => session.Kind != SessionKind.Test).ToList();
        var broken = WeekJudge.Of(problem, placed);
        Assert.True(broken.Count == 0, $"{name}: {string.Join("; ", broken)}\n{ShownWeek.Of(proposal)}");
        Assert.InRange(proposal.Bound, 0, proposal.Cost);
        Assert.Equal(proposal.Sessions.Count, proposal.Reasons.Count);
        Assert.All(proposal.Reasons, reasons => Assert.NotEmpty(reasons));
        Entered(season, team, week, from, proposal, name);
        var brought = WeekRules.Brought(season, team, proposal);
        Assert.True(brought.Count == 0, $"{name}: {string.Join("; ", brought.Select(finding => $"{finding.Severity} {finding.Rule.Id} {finding.Sentence}"))}\n{ShownWeek.Of(proposal)}");
        return proposal;
    }

    /// <summary>Days, matches around them and open sessions, read from the season once more and otherwise.</summary>
    private static void ReadsRight(Season season, SeasonWeek week, DateOnly from, WeekProblem problem)
    {
        Assert.Equal(week.Days.Days(), problem.Days.Select(day => day.Date));
        foreach (var day in problem.Days)
        {
            bool IsPlayed(int away) => season.AllMatches.Any(match => match is { IsOff: false, Day: { } first } && day.Date.AddDays(away) is var there && first <= there && there <= (match.LastDay > first ? match.LastDay : first));
            Assert.Equal(Enumerable.Range(0, Long).FirstOrDefault(IsPlayed, 1000), day.ToNext);
            Assert.Equal(Enumerable.Range(0, Long).FirstOrDefault(away => IsPlayed(-away), 1000), day.SinceLast);
            Assert.Equal(day.Date < from, day.IsPast);
        }
        Assert.All(problem.Standing, session => Assert.True(season.Session(session.Id!.Value) is { IsLocked: false, IsCancelled: false, IsOurs: true } open && open.Day >= from));
    }

    /// <summary>As edits it is taken by the season, gives the load it says, and asked again changes nothing.</summary>
    private static void Entered(Season season, Setup team, SeasonWeek week, DateOnly from, WeekProposal proposal, string name)
    {
        var edits = WeekEdits.Of(season, team, proposal, Id);
        var after = Plans.After(season, edits);
        Assert.All(edits, edit => Assert.True(edit is RemoveSession or SetSession));
        if (proposal.Problem.Stop is not null)
        {
            Assert.Empty(edits);
            return;
        }
        Assert.Equal(
            proposal.Sessions.Select(session => (proposal.Problem.Days[session.Day].Date, session.Slot, session.Kind, session.Minutes, session.Rpe)).Order(),
            after.SessionsIn(week).Where(session => session is { IsOurs: true, IsCancelled: false } && session.Day >= from && (proposal.Problem.Standing.Any(one => one.Id == session.Id) || season.Session(session.Id) is null))
                .Select(session => (session.Day, session.Slot, session.Kind, session.Minutes.Value, session.Rpe.Value)).Order());
        foreach (var session in edits.OfType<SetSession>().Select(edit => edit.Session).Where(session => season.Session(session.Id) is null)) DoseFits(team, session, name);
        // What is locked, past, cancelled or the head coach's is as it was.
        foreach (var session in season.AllSessions.Where(session => proposal.Problem.Standing.All(one => one.Id != session.Id))) Assert.Equal(session, after.Session(session.Id));
        var again = WeekProposals.Of(WeekProblem.Of(after, team, week, from));
        Assert.True(WeekEdits.Of(after, team, again, Id).Count == 0 || !again.IsProven || !proposal.IsProven, $"{name}: {string.Join("; ", WeekEdits.Of(after, team, again, Id))}\n{ShownWeek.Of(proposal)}\n{ShownWeek.Of(again)}");
    }

    /// <summary>
    /// Minutes and dose go together: of the minutes that what is carried leaves, ten to warm up (five before a small dose or the upper
    /// body) and so many for a set, ten contacts or ten metres, one portion more not reached. Common practice, no source.
    /// </summary>
    private static void DoseFits(Setup team, Session session, string name)
    {
        var doses = (session.Doses ?? []).Select(dose => (Dose: dose, Kind: team.Qualities.First(quality => quality.Id == dose.Quality).Kind)).ToList();
        (int Ready, int Each, QualityKind Own, Func<Dose, int?> Portions)? known = session.Kind switch
        {
            SessionKind.LowerStrength => (10, 5, QualityKind.MaximumStrength, dose => dose.Sets),
            SessionKind.SmallDose => (5, 5, QualityKind.MaximumStrength, dose => dose.Sets),
            SessionKind.UpperStrength => (5, 4, QualityKind.MaximumStrength, dose => dose.Sets),
            SessionKind.Hypertrophy => (10, 3, QualityKind.Hypertrophy, dose => dose.Sets),
            SessionKind.Power => (10, 5, QualityKind.Power, dose => dose.Contacts / 10),
            SessionKind.Speed => (10, 1, QualityKind.Speed, dose => dose.Metres / 10),
            SessionKind.Prevention => (0, 3, QualityKind.Prevention, dose => dose.Sets),
            _ => null,
        };
        if (known is not var (ready, each, own, portions) || doses.Find(one => one.Kind == own).Dose is not { } main) return;
        var minutes = session.Minutes.Value - doses.Where(one => one.Kind != own).Sum(one => one.Kind switch { QualityKind.MaximumStrength => 15, QualityKind.Hypertrophy => 10, _ => 5 });
        Assert.True(ready + each * portions(main) <= minutes && minutes < ready + each * (portions(main) + 1), $"{name}: {session.Kind} of {session.Minutes.Value} min, {minutes} for {portions(main)}");
    }

    [Fact]
    public void The_same_week_gives_the_same_bytes()
    {
        for (var seed = 1; seed <= 6; seed++)
        {
            var (season, week, from) = WeekSeasons.Drawn(seed);
            string Once() => string.Join('\n', WeekEdits.Of(season, Seasons.Team, WeekProposals.Of(WeekProblem.Of(season, Seasons.Team, week, from)), Id).Select(Wire.LogText.Of));
            Assert.Equal(Once(), Once());
        }
    }

    /// <summary>What is said against another place is what the judge finds there, and nothing is said where it finds nothing.</summary>
    [Fact]
    public void Why_not_there_is_said_exactly_where_a_condition_breaks()
    {
        var (free, kept) = (0, 0);
        for (var seed = 1; seed <= Seasons.Given("COUNT", 40) / 2; seed++)
        {
            var (season, week, from) = WeekSeasons.Drawn(seed);
            var proposal = WeekProposals.Of(WeekProblem.Of(season, Seasons.Team, week, from));
            var placed = proposal.Sessions.Where(session => session.Kind != SessionKind.Test).ToList();
            foreach (var session in placed)
                foreach (var day in proposal.Problem.Days)
                    foreach (var slot in Enum.GetValues<DaySlot>())
                    {
                        var said = WeekProposals.WhyNot(proposal, session, day.Index, slot);
                        var moved = session with { Day = day.Index, Slot = slot };
                        // Upper-body work is light on the day after a match; dragged there it is what it is.
                        var broken = WeekJudge.Of(proposal.Problem, [.. placed.Where(other => other != session), moved]);
                        broken.RemoveAll(one => one.StartsWith("hard after a match", StringComparison.Ordinal) && said.Count == 0);
                        Assert.True(said.Count == 0 == (broken.Count == 0), $"seed {seed}, {session.Kind} to {day.Date:ddd} {slot}: said {string.Join("; ", said.Select(one => one.Sentence))}, judged {string.Join("; ", broken)}\n{ShownWeek.Of(proposal)}");
                        if (said.Count == 0) free++;
                        else kept++;
                    }
        }
        Assert.True(free > 50 && kept > 200, $"{free} free, {kept} kept");
    }
}
